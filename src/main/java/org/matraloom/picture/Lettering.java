package org.matraloom.picture;

import java.util.List;

/**
 * A piece of text drawn once: its outline and its advance, in thousandths of the type size.
 *
 * @param number which lettering of its typeface, from 0; equal texts of one weight have one number
 * @param text the text it shows
 * @param advance how far the next text is from its beginning
 * @param outline the outline, x to the right, y downwards from the base line
 */
public record Lettering(int number, String text, double advance, List<Stroke> outline) {

  /** One step of an outline. */
  public sealed interface Stroke {

    /**
     * Draws the step.
     *
     * @param pen what it is drawn with
     */
    void draw(OutlinePen pen);

    /**
     * Begins a new contour.
     *
     * @param x to the right, in thousandths of the type size
     * @param y upwards from the base line, in the same
     */
    record Move(int x, int y) implements Stroke {
      @Override
      public void draw(OutlinePen pen) {
        pen.move(this);
      }
    }

    /**
     * A straight line.
     *
     * @param x its end to the right, in thousandths of the type size
     * @param y its end upwards from the base line, in the same
     */
    record Line(int x, int y) implements Stroke {
      @Override
      public void draw(OutlinePen pen) {
        pen.line(this);
      }
    }

    /**
     * A curve with one control point.
     *
     * @param x1 the control point to the right, in thousandths of the type size
     * @param y1 the control point upwards from the base line
     * @param x its end to the right
     * @param y its end upwards
     */
    record Bend(int x1, int y1, int x, int y) implements Stroke {
      @Override
      public void draw(OutlinePen pen) {
        pen.bend(this);
      }
    }

    /**
     * A curve with two control points.
     *
     * @param x1 the first control point to the right, in thousandths of the type size
     * @param y1 the first control point upwards from the base line
     * @param x2 the second control point to the right
     * @param y2 the second control point upwards
     * @param x its end to the right
     * @param y its end upwards
     */
    record Curve(int x1, int y1, int x2, int y2, int x, int y) implements Stroke {
      @Override
      public void draw(OutlinePen pen) {
        pen.curve(this);
      }
    }

    /** Closes the contour. */
    record Close() implements Stroke {
      @Override
      public void draw(OutlinePen pen) {
        pen.close();
      }
    }
  }

  public Lettering {
    outline = List.copyOf(outline);
  }

  /**
   * How wide it is at a size.
   *
   * @param size the type size, in points
   * @return points
   */
  public double width(double size) {
    return advance * size / Typeface.UNITS;
  }
}
