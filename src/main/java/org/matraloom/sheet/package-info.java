/**
 * The written page: its content, and its forms as text, HTML, SVG, PDF and sentences.
 *
 * <p>One content, {@link org.matraloom.sheet.Sheet}, stands behind every form: rows of beats with
 * their marks, in exact beats. Writers get streams and never touch files. Lengths on paper are in
 * points, 72 to the inch, y downwards from the top of the page.
 */
package org.matraloom.sheet;
