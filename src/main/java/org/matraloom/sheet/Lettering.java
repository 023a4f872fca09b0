package org.matraloom.sheet;

import java.util.List;

/**
 * A piece of text drawn once: its outline and its advance, in thousandths of the type size.
 *
 * @param number which lettering of its typeface, from 0; equal texts of one weight have one number
 * @param text the text it shows
 * @param advance how far the next text is from its beginning
 * @param outline the outline, x to the right, y downwards from the base line
 */
record Lettering(int number, String text, double advance, List<Stroke> outline) {

  /** One step of an outline. */
  sealed interface Stroke {

    /** Begins a new contour. */
    record Move(int x, int y) implements Stroke {}

    /** A straight line. */
    record Line(int x, int y) implements Stroke {}

    /** A curve with one control point. */
    record Bend(int x1, int y1, int x, int y) implements Stroke {}

    /** A curve with two control points. */
    record Curve(int x1, int y1, int x2, int y2, int x, int y) implements Stroke {}

    /** Closes the contour. */
    record Close() implements Stroke {}
  }

  Lettering {
    outline = List.copyOf(outline);
  }

  /** How wide it is at a size. */
  double width(double size) {
    return advance * size / Typeface.UNITS;
  }
}
