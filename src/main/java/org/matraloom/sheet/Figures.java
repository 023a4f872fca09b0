package org.matraloom.sheet;

import org.matraloom.picture.Points;

/** Figures in the form of SVG. */
final class Figures {

  private Figures() {}

  /** The paths of a figure, for a drawing in which its square is {@value Figure#BOX} wide. */
  static String svg(Figure figure, String colour) {
    StringBuilder svg = new StringBuilder();
    for (Figure.Part part : figure.parts()) {
      svg.append("<path d=\"").append(part.path()).append('"');
      if (part.width() == 0) {
        svg.append(" fill=\"").append(colour).append("\"/>");
      } else {
        svg.append(" fill=\"none\" stroke=\"").append(colour);
        svg.append("\" stroke-width=\"").append(Points.text(part.width()));
        svg.append("\" stroke-linecap=\"round\" stroke-linejoin=\"round\"/>");
      }
    }
    return svg.toString();
  }
}
