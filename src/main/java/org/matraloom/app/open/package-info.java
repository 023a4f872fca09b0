/**
 * The local page: a shelf of scores, and for each one text, sheet, sound, takes and files.
 *
 * <p>Nothing is decided here. What the page shows comes from the classes that the commands call, or
 * from a command itself. Entry class: {@link org.matraloom.app.open.OpenCommand}.
 */
package org.matraloom.app.open;
