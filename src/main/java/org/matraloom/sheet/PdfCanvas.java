package org.matraloom.sheet;

import java.util.HexFormat;
import java.util.Scanner;
import org.matraloom.picture.Lettering;
import org.matraloom.picture.Points;

/** The drawing operators of one PDF page; its y runs upwards. */
final class PdfCanvas {

  private static final HexFormat HEX = HexFormat.of();

  private final StringBuilder out = new StringBuilder();

  String operators() {
    return out.toString();
  }

  /** Shows one glyph of a font. */
  void text(Drawn.Text text, int font, int code) {
    String size = Points.text(text.size());
    out.append("BT ").append(grey(text.tone())).append(" g /F").append(font).append(" 1 Tf ");
    out.append(size).append(" 0 0 ").append(size).append(' ').append(at(text.x(), text.y()));
    out.append(" Tm <").append(HEX.toHexDigits((byte) code)).append("> Tj ET\n");
  }

  void draw(Drawn drawn) {
    if (drawn instanceof Drawn.Rule rule) {
      out.append(grey(rule.tone())).append(" G ").append(Points.text(rule.width())).append(" w ");
      out.append(at(rule.x1(), rule.y1())).append(" m ");
      out.append(at(rule.x2(), rule.y2())).append(" l S\n");
    } else if (drawn instanceof Drawn.Box box) {
      boolean filled = box.line() == 0;
      out.append(grey(box.tone())).append(filled ? " g " : " G ");
      out.append(filled ? "" : Points.text(box.line()) + " w ");
      out.append(at(box.x(), box.y() + box.height())).append(' ');
      out.append(Points.text(box.width())).append(' ').append(Points.text(box.height()));
      out.append(filled ? " re f\n" : " re S\n");
    } else if (drawn instanceof Drawn.Symbol sign) {
      sign(sign);
    }
  }

  private void sign(Drawn.Symbol sign) {
    String scale = Double.toString(Math.rint(sign.size() / Figure.BOX * 1e4) / 1e4);
    out.append("q ").append(scale).append(" 0 0 -").append(scale).append(' ');
    out.append(at(sign.x(), sign.y())).append(" cm /").append(sign.figure()).append(" Do Q\n");
  }

  /** A figure as the content of a form that pages share; its y runs downwards. */
  static String form(Figure figure) {
    StringBuilder out = new StringBuilder();
    String ink = grey(Drawn.Shade.INK);
    out.append("1 J 1 j ").append(ink).append(" g ").append(ink).append(" G\n");
    for (Figure.Part part : figure.parts()) {
      out.append(part.width() == 0 ? "" : Points.text(part.width()) + " w ");
      path(part.path(), out);
      out.append(part.width() == 0 ? "f\n" : "S\n");
    }
    return out.toString();
  }

  /** The words M, L, C and Z of a figure as PDF operators. */
  private static void path(String path, StringBuilder out) {
    try (Scanner words = new Scanner(path.replaceAll("([MLCZ])", " $1 "))) {
      while (words.hasNext()) {
        switch (words.next()) {
          case "M" -> out.append(words.next() + " " + words.next() + " m ");
          case "L" -> out.append(words.next() + " " + words.next() + " l ");
          case "C" -> curves(words, out);
          default -> out.append("h ");
        }
      }
    }
  }

  private static void curves(Scanner words, StringBuilder out) {
    do {
      for (int number = 0; number < 6; number++) {
        out.append(words.next()).append(' ');
      }
      out.append("c ");
    } while (words.hasNextDouble());
  }

  private static String at(double x, double y) {
    return Points.text(x) + " " + Points.text(PageStyle.HEIGHT - y);
  }

  private static String grey(Drawn.Shade tone) {
    return Points.text(tone.grey());
  }

  /**
   * A lettering as the procedure of a glyph.
   *
   * <p>It begins with d0, not d1, since viewers put the glyphs of d1 on whole pixels.
   */
  static String glyph(Lettering lettering) {
    StringBuilder procedure = new StringBuilder();
    procedure.append(Math.round(lettering.advance()));
    procedure.append(" 0 d0\n");
    double x = 0;
    double y = 0;
    for (Lettering.Stroke stroke : lettering.outline()) {
      if (stroke instanceof Lettering.Stroke.Move to) {
        procedure.append(to.x() + " " + -to.y() + " m\n");
        x = to.x();
        y = to.y();
      } else if (stroke instanceof Lettering.Stroke.Line to) {
        procedure.append(to.x() + " " + -to.y() + " l\n");
        x = to.x();
        y = to.y();
      } else if (stroke instanceof Lettering.Stroke.Bend to) {
        procedure.append(third(x, to.x1()) + " " + -third(y, to.y1()) + " ");
        procedure.append(third(to.x(), to.x1()) + " " + -third(to.y(), to.y1()) + " ");
        procedure.append(to.x() + " " + -to.y() + " c\n");
        x = to.x();
        y = to.y();
      } else if (stroke instanceof Lettering.Stroke.Curve to) {
        procedure.append(to.x1() + " " + -to.y1() + " " + to.x2() + " " + -to.y2() + " ");
        procedure.append(to.x() + " " + -to.y() + " c\n");
        x = to.x();
        y = to.y();
      } else {
        procedure.append("h\n");
      }
    }
    return procedure.append("f\n").toString();
  }

  /** Two thirds of the way from an end of a quadratic curve to its control point. */
  private static long third(double end, double control) {
    return Math.round(end + (control - end) * 2 / 3);
  }
}
