package org.matraloom.picture;

/**
 * A lettering as the procedure of a glyph.
 *
 * <p>It begins with d0, not d1, since viewers put the glyphs of d1 on whole pixels.
 */
public final class PdfGlyph implements OutlinePen {

  private final StringBuilder procedure = new StringBuilder();
  private double x;
  private double y;

  private PdfGlyph() {}

  /**
   * Draws a lettering.
   *
   * @param lettering what is drawn
   * @return operators of PDF
   */
  public static String procedure(Lettering lettering) {
    PdfGlyph glyph = new PdfGlyph();
    glyph.procedure.append(Math.round(lettering.advance())).append(" 0 d0\n");
    lettering.outline().forEach(step -> step.draw(glyph));
    return glyph.procedure.append("f\n").toString();
  }

  @Override
  public void move(Lettering.Stroke.Move to) {
    end(to.x(), to.y(), "m");
  }

  @Override
  public void line(Lettering.Stroke.Line to) {
    end(to.x(), to.y(), "l");
  }

  /** PDF has no curves with one control point. */
  @Override
  public void bend(Lettering.Stroke.Bend to) {
    procedure.append(third(x, to.x1()) + " " + -third(y, to.y1()) + " ");
    procedure.append(third(to.x(), to.x1()) + " " + -third(to.y(), to.y1()) + " ");
    end(to.x(), to.y(), "c");
  }

  @Override
  public void curve(Lettering.Stroke.Curve to) {
    procedure.append(to.x1() + " " + -to.y1() + " " + to.x2() + " " + -to.y2() + " ");
    end(to.x(), to.y(), "c");
  }

  @Override
  public void close() {
    procedure.append("h\n");
  }

  private void end(int toX, int toY, String operator) {
    procedure.append(toX + " " + -toY + " " + operator + "\n");
    x = toX;
    y = toY;
  }

  /** Two thirds of the way from an end of a quadratic curve to its control point. */
  private static long third(double end, double control) {
    return Math.round(end + (control - end) * 2 / 3);
  }
}
