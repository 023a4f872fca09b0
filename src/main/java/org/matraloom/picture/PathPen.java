package org.matraloom.picture;

import java.awt.Shape;
import java.awt.geom.Path2D;

/** Draws an outline into a path, its base line beginning at a place; y runs downwards. */
public final class PathPen implements OutlinePen {

  private final Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
  private final double x;
  private final double y;
  private final double scale;

  private PathPen(double x, double y, double scale) {
    this.x = x;
    this.y = y;
    this.scale = scale;
  }

  /**
   * The outline of a lettering as a shape to be filled.
   *
   * @param lettering the lettering
   * @param x where it begins
   * @param y its base line; y runs downwards
   * @param size the type size
   * @return the shape
   */
  public static Shape shape(Lettering lettering, double x, double y, double size) {
    PathPen pen = new PathPen(x, y, size / Typeface.UNITS);
    lettering.outline().forEach(step -> step.draw(pen));
    return pen.path;
  }

  @Override
  public void move(Lettering.Stroke.Move to) {
    path.moveTo(right(to.x()), down(to.y()));
  }

  @Override
  public void line(Lettering.Stroke.Line to) {
    path.lineTo(right(to.x()), down(to.y()));
  }

  @Override
  public void bend(Lettering.Stroke.Bend to) {
    path.quadTo(right(to.x1()), down(to.y1()), right(to.x()), down(to.y()));
  }

  @Override
  public void curve(Lettering.Stroke.Curve to) {
    path.curveTo(
        right(to.x1()), down(to.y1()), right(to.x2()), down(to.y2()), right(to.x()), down(to.y()));
  }

  @Override
  public void close() {
    path.closePath();
  }

  private double right(int units) {
    return x + units * scale;
  }

  private double down(int units) {
    return y + units * scale;
  }
}
