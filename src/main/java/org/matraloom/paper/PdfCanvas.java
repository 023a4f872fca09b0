package org.matraloom.paper;

import java.util.HexFormat;
import java.util.Map;
import java.util.Scanner;
import org.matraloom.picture.Points;

/** The drawing operators of one PDF page; its y runs upwards. */
public final class PdfCanvas implements Drawn.DrawnVisitor<String> {

  private static final HexFormat HEX = HexFormat.of();

  /** Glyphs of one font, each with a code of one byte. */
  public static final int GLYPHS_PER_FONT = 200;

  private final double height;
  private final Map<Integer, Integer> glyphs;

  /**
   * A page to draw on.
   *
   * @param height of the page in points
   * @param glyphs letterings by their numbers, with the place of each among all glyphs
   */
  public PdfCanvas(double height, Map<Integer, Integer> glyphs) {
    this.height = height;
    this.glyphs = glyphs;
  }

  /** Shows one glyph of a font. */
  @Override
  public String text(Drawn.Text text) {
    int glyph = glyphs.get(text.lettering().number());
    String size = Points.text(text.size());
    return "BT "
        + grey(text.tone())
        + " g /F"
        + glyph / GLYPHS_PER_FONT
        + " 1 Tf "
        + (size + " 0 0 " + size + " " + at(text.x(), text.y()))
        + " Tm <"
        + HEX.toHexDigits((byte) (glyph % GLYPHS_PER_FONT + 1))
        + "> Tj ET\n";
  }

  @Override
  public String rule(Drawn.Rule rule) {
    String line = grey(rule.tone()) + " G " + Points.text(rule.width()) + " w ";
    return line + at(rule.x1(), rule.y1()) + " m " + at(rule.x2(), rule.y2()) + " l S\n";
  }

  @Override
  public String box(Drawn.Box box) {
    boolean filled = box.line() == 0;
    return grey(box.tone())
        + (filled ? " g " : " G " + Points.text(box.line()) + " w ")
        + at(box.x(), box.y() + box.height())
        + " "
        + Points.text(box.width())
        + " "
        + Points.text(box.height())
        + (filled ? " re f\n" : " re S\n");
  }

  @Override
  public String symbol(Drawn.Symbol symbol) {
    String scale = Double.toString(Math.rint(symbol.size() / Figure.BOX * 1e4) / 1e4);
    return "q "
        + (scale + " 0 0 -" + scale + " " + at(symbol.x(), symbol.y()))
        + " cm /"
        + symbol.figure()
        + " Do Q\n";
  }

  /**
   * A figure as the content of a form that pages share; its y runs downwards.
   *
   * @param figure any figure
   * @return drawing operators of PDF
   */
  public static String form(Figure figure) {
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

  private String at(double x, double y) {
    return Points.text(x) + " " + Points.text(height - y);
  }

  private static String grey(Drawn.Shade tone) {
    return Points.text(tone.grey());
  }
}
