/**
 * Turns a performance into things to read and to hand on: the written page, exchange files and the
 * page for a phone.
 *
 * <p>One content, {@link org.matraloom.sheet.Sheet}, stands behind every form of the page: rows of
 * beats with their marks, in exact beats. Writers get streams and never touch files. Lengths on
 * paper are in points, 72 to the inch, y downwards from the top of the page.
 */
package org.matraloom.sheet;
