/**
 * Commands to look things up while writing: the talas and the sollus.
 *
 * <p>A command is a small class that reads its options, calls one thing and prints. Entry classes:
 * {@link org.matraloom.app.write.TalasCommand} and {@link org.matraloom.app.write.SollusCommand}.
 */
package org.matraloom.app.write;
