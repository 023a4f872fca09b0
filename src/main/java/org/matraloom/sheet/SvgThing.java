package org.matraloom.sheet;

import org.matraloom.picture.Points;
import org.matraloom.picture.Typeface;

/** A thing on a drawn page as an element of SVG. */
final class SvgThing implements DrawnVisitor<String> {

  static final SvgThing INSTANCE = new SvgThing();

  private SvgThing() {}

  @Override
  public String text(Drawn.Text text) {
    return "<use xlink:href=\"#t"
        + text.lettering().number()
        + "\" transform=\"translate("
        + at(text.x(), text.y())
        + ") scale("
        + scale(text.size() / Typeface.UNITS)
        + ")\" fill=\""
        + text.tone().hex()
        + "\"/>\n";
  }

  @Override
  public String rule(Drawn.Rule rule) {
    return "<path d=\"M"
        + at(rule.x1(), rule.y1())
        + "L"
        + at(rule.x2(), rule.y2())
        + "\" stroke=\""
        + rule.tone().hex()
        + "\" stroke-width=\""
        + Points.text(rule.width())
        + "\"/>\n";
  }

  @Override
  public String box(Drawn.Box box) {
    String line =
        "none\" stroke=\"" + box.tone().hex() + "\" stroke-width=\"" + Points.text(box.line());
    return "<rect x=\""
        + Points.text(box.x())
        + "\" y=\""
        + Points.text(box.y())
        + "\" width=\""
        + Points.text(box.width())
        + "\" height=\""
        + Points.text(box.height())
        + "\" fill=\""
        + (box.line() == 0 ? box.tone().hex() : line)
        + "\"/>\n";
  }

  @Override
  public String symbol(Drawn.Symbol symbol) {
    return "<g transform=\"translate("
        + at(symbol.x(), symbol.y())
        + ") scale("
        + scale(symbol.size() / Figure.BOX)
        + ")\"><use xlink:href=\"#"
        + symbol.figure()
        + "\"/></g>\n";
  }

  private static String at(double x, double y) {
    return Points.text(x) + " " + Points.text(y);
  }

  private static String scale(double factor) {
    return Double.toString(Math.rint(factor * 1e4) / 1e4);
  }
}
