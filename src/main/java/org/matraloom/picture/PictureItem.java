package org.matraloom.picture;

import java.awt.BasicStroke;
import java.awt.Shape;

/** Something drawn in a picture. A grey is 0 (black) to 255. */
sealed interface PictureItem {

  /** The parts of a broken line, in points. */
  float DASH = 4;

  /** The gaps of a broken line, in points. */
  float GAP = 3;

  /** How dark it is. */
  int grey();

  /** What of the page it covers. */
  Shape ink();

  /** A text, its base line beginning at a place. */
  record Words(double x, double y, double size, Lettering lettering, int grey)
      implements PictureItem {
    @Override
    public Shape ink() {
      return PathPen.shape(lettering, x, y, size);
    }
  }

  /** A shape filled, or drawn along its edge if the width is above 0. */
  record Form(Shape shape, double width, boolean dashed, int grey) implements PictureItem {

    @Override
    public Shape ink() {
      return width > 0 ? stroke().createStrokedShape(shape) : shape;
    }

    private BasicStroke stroke() {
      float[] dashes = dashed ? new float[] {DASH, GAP} : null;
      return new BasicStroke(
          (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes, 0);
    }
  }
}
