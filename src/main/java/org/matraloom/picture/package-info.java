/**
 * A drawing surface in greys and the letters on it, written as SVG or PNG.
 *
 * <p>Lengths are points, 72 to the inch, x to the right, y downwards from the upper left corner;
 * outlines of letters are thousandths of the type size, y upwards. A grey is 0 (black) to 255.
 * Entry class: {@link org.matraloom.picture.Picture}.
 */
package org.matraloom.picture;
