package org.matraloom.film;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.Locale;
import org.matraloom.picture.Points;
import org.matraloom.picture.Xml;

/** A screen as SVG 1.1: every shape a filled path. */
final class ScreenSvg implements Surface {

  private static final int RGB = 0xffffff;

  private final FilmSize size;
  private final String title;
  private final StringBuilder shapes = new StringBuilder();

  ScreenSvg(FilmSize size, String title) {
    this.size = size;
    this.title = title;
  }

  @Override
  public void fill(Shape shape, Color color) {
    String hex = String.format(Locale.ROOT, "#%06x", color.getRGB() & RGB);
    PathIterator path = shape.getPathIterator(null);
    String rule =
        path.getWindingRule() == PathIterator.WIND_EVEN_ODD ? " fill-rule=\"evenodd\"" : "";
    shapes.append("<path fill=\"").append(hex).append('"').append(rule).append(" d=\"");
    double[] points = new double[6];
    for (; !path.isDone(); path.next()) {
      switch (path.currentSegment(points)) {
        case PathIterator.SEG_MOVETO -> step('M', points, 2);
        case PathIterator.SEG_LINETO -> step('L', points, 2);
        case PathIterator.SEG_QUADTO -> step('Q', points, 4);
        case PathIterator.SEG_CUBICTO -> step('C', points, 6);
        default -> shapes.append('Z');
      }
    }
    shapes.append("\"/>\n");
  }

  private void step(char word, double[] points, int count) {
    shapes.append(word);
    for (int index = 0; index < count; index++) {
      shapes.append(index == 0 ? "" : " ").append(Points.text(points[index]));
    }
  }

  void write(Appendable out) throws IOException {
    String box = size.whole().getBounds().width + " " + size.whole().getBounds().height;
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + size.widthPixels());
    out.append("\" height=\"" + size.heightPixels() + "\" viewBox=\"0 0 " + box + "\">\n");
    out.append("<title>" + Xml.escape(title) + "</title>\n").append(shapes).append("</svg>\n");
  }
}
