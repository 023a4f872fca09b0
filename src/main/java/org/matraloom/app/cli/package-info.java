/**
 * What the commands share: groups of options, numbers as they are typed, words and output.
 *
 * <p>Bad input is a {@link org.matraloom.app.cli.UserError}; its message says what was given, what
 * is allowed and how to put it right. A group of options is a mixin that gives a value of a lower
 * room. Numbers stay exact ({@link org.matraloom.app.cli.ExactNumber}); files are written under
 * another name and moved ({@link org.matraloom.app.cli.WholeFile}).
 */
package org.matraloom.app.cli;
