package org.matraloom.picture;

/** Draws an outline, told one step after the other; a new kind of step is a new method for all. */
public interface OutlinePen {

  /**
   * Begins a new contour.
   *
   * @param to where
   */
  void move(Lettering.Stroke.Move to);

  /**
   * Draws a straight line.
   *
   * @param to where to
   */
  void line(Lettering.Stroke.Line to);

  /**
   * Draws a curve with one control point.
   *
   * @param to where to
   */
  void bend(Lettering.Stroke.Bend to);

  /**
   * Draws a curve with two control points.
   *
   * @param to where to
   */
  void curve(Lettering.Stroke.Curve to);

  /** Closes the contour. */
  void close();
}
