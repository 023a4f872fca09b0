/**
 * The things that are drawn on a page, and the operators of PDF that draw them.
 *
 * <p>Whoever sets a page fills lists of {@link org.matraloom.paper.Drawn}; {@link
 * org.matraloom.paper.Figure} holds the signs, and {@link org.matraloom.paper.PdfCanvas} draws all
 * of them. Lengths are in points, 72 to the inch, y downwards from the top of the page. A new sign
 * is a constant of {@code Figure}.
 */
package org.matraloom.paper;
