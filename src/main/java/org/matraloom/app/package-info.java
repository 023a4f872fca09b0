/**
 * The command line: options, wiring and printing, no musical decisions.
 *
 * <p>A command is a small class that reads its options, calls one thing and prints. Bad input is a
 * {@link org.matraloom.app.UserError}; only {@link org.matraloom.app.Main} ends the process.
 */
package org.matraloom.app;
