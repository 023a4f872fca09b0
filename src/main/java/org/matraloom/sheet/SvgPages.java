package org.matraloom.sheet;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.matraloom.paper.Drawn;
import org.matraloom.paper.Figure;
import org.matraloom.picture.Lettering;
import org.matraloom.picture.Points;
import org.matraloom.picture.SvgOutline;
import org.matraloom.picture.Typeface;
import org.matraloom.picture.Xml;

/** The sheet as SVG 1.1 drawings, one an A4 page, with every letter as an outline. */
public final class SvgPages {

  /** A thing on a drawn page as an element of SVG. */
  private static final class Element implements Drawn.DrawnVisitor<String> {
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

  private final Sheet sheet;
  private final List<List<Drawn>> pages;

  private SvgPages(Sheet sheet, List<List<Drawn>> pages) {
    this.sheet = sheet;
    this.pages = pages;
  }

  /**
   * Sets a sheet on pages.
   *
   * @param sheet what to write
   * @return its pages
   */
  public static SvgPages of(Sheet sheet) {
    return new SvgPages(sheet, PageSetter.set(sheet, new Typeface()));
  }

  /**
   * How many pages it takes.
   *
   * @return pages, at least 1
   */
  public int count() {
    return pages.size();
  }

  /**
   * Writes one page.
   *
   * @param number which page, from 1
   * @param out where the drawing goes
   * @throws IOException if it cannot be written
   */
  public void write(int number, Appendable out) throws IOException {
    List<Drawn> page = pages.get(number - 1);
    out.append(
        String.format(
            Locale.ROOT,
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"\
             width="210mm" height="297mm" viewBox="0 0 %s %s" role="img">
            <title>%s</title>
            """,
            Points.text(PageStyle.WIDTH),
            Points.text(PageStyle.HEIGHT),
            Xml.escape(new SheetWords(sheet).title() + ", page " + number)));
    out.append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
    defs(page, out);
    for (Drawn drawn : page) {
      out.append(drawn.told(new Element()));
    }
    out.append("</svg>\n");
  }

  private static void defs(List<Drawn> page, Appendable out) throws IOException {
    Map<Integer, Lettering> letterings = new LinkedHashMap<>();
    for (Drawn drawn : page) {
      if (drawn instanceof Drawn.Text text) {
        letterings.put(text.lettering().number(), text.lettering());
      }
    }
    out.append("<defs>\n");
    for (Lettering lettering : letterings.values()) {
      out.append("<path id=\"t" + lettering.number() + "\" d=\"");
      out.append(SvgOutline.of(lettering) + "\"><title>" + Xml.escape(lettering.text()));
      out.append("</title></path>\n");
    }
    for (Figure figure : Figure.values()) {
      out.append("<g id=\"" + figure + "\">" + figure.svg(Drawn.Shade.INK.hex()) + "</g>\n");
    }
    out.append("</defs>\n");
  }
}
