/** The command line: options, wiring and printing, no musical decisions. */
package org.matraloom.app;
