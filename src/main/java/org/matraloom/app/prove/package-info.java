/**
 * Commands that prove a piece and make it land: check, fit, endings, shapes, conversions.
 *
 * <p>A command is a small class that reads its options, calls one thing and prints; exact numbers
 * are printed exactly. Entry class: {@link org.matraloom.app.prove.CheckCommand}.
 */
package org.matraloom.app.prove;
