/** The practice log: what was practised, how it went, and what it says about tempo and voice. */
package org.matraloom.log;
