package org.matraloom.picture;

/** A lettering as the path data of SVG, in steps relative to the point before. */
public final class SvgOutline implements OutlinePen {

  private final StringBuilder path = new StringBuilder();
  private int x;
  private int y;
  private int contourX;
  private int contourY;

  private SvgOutline() {}

  /**
   * The outline as path data.
   *
   * @param lettering the lettering
   * @return the value of a path's "d"
   */
  public static String of(Lettering lettering) {
    SvgOutline outline = new SvgOutline();
    lettering.outline().forEach(step -> step.draw(outline));
    return outline.path.toString();
  }

  @Override
  public void move(Lettering.Stroke.Move to) {
    step('m', to.x(), to.y());
    contourX = x;
    contourY = y;
  }

  @Override
  public void line(Lettering.Stroke.Line to) {
    step('l', to.x(), to.y());
  }

  @Override
  public void bend(Lettering.Stroke.Bend to) {
    step('q', to.x1(), to.y1(), to.x(), to.y());
  }

  @Override
  public void curve(Lettering.Stroke.Curve to) {
    step('c', to.x1(), to.y1(), to.x2(), to.y2(), to.x(), to.y());
  }

  @Override
  public void close() {
    path.append('z');
    x = contourX;
    y = contourY;
  }

  private void step(char word, int... points) {
    path.append(word);
    for (int index = 0; index < points.length; index += 2) {
      number(points[index] - x, index == 0);
      number(points[index + 1] - y, false);
    }
    x = points[points.length - 2];
    y = points[points.length - 1];
  }

  private void number(int value, boolean first) {
    path.append(first || value < 0 ? "" : " ").append(value);
  }
}
