package org.matraloom.picture;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/** Small shapes for the points of a picture, told apart without colour. */
public final class PictureMarks {

  private PictureMarks() {}

  /**
   * A round mark.
   *
   * @param x its middle
   * @param y its middle
   * @param radius its size
   * @return the shape
   */
  public static Shape dot(double x, double y, double radius) {
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  /**
   * A cross that lies on its side.
   *
   * @param x its middle
   * @param y its middle
   * @param radius half its width
   * @return the shape, to be drawn along its edge
   */
  public static Shape cross(double x, double y, double radius) {
    Path2D path = new Path2D.Double();
    path.moveTo(x - radius, y - radius);
    path.lineTo(x + radius, y + radius);
    path.moveTo(x - radius, y + radius);
    path.lineTo(x + radius, y - radius);
    return path;
  }

  /**
   * An upright cross.
   *
   * @param x its middle
   * @param y its middle
   * @param radius half its width
   * @return the shape, to be drawn along its edge
   */
  public static Shape plus(double x, double y, double radius) {
    Path2D path = new Path2D.Double();
    path.moveTo(x - radius, y);
    path.lineTo(x + radius, y);
    path.moveTo(x, y - radius);
    path.lineTo(x, y + radius);
    return path;
  }

  /**
   * A triangle with a point.
   *
   * @param x its middle
   * @param y its middle
   * @param radius half its width
   * @param up whether it points up
   * @return the shape
   */
  public static Shape triangle(double x, double y, double radius, boolean up) {
    double tip = up ? -radius : radius;
    Path2D path = new Path2D.Double();
    path.moveTo(x, y + tip);
    path.lineTo(x - radius, y - tip);
    path.lineTo(x + radius, y - tip);
    path.closePath();
    return path;
  }
}
