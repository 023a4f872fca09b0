package org.matraloom.sheet;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.matraloom.picture.Lettering;
import org.matraloom.picture.Points;
import org.matraloom.picture.SvgOutline;
import org.matraloom.picture.Typeface;
import org.matraloom.picture.Xml;

/** The sheet as SVG 1.1 drawings, one an A4 page, with every letter as an outline. */
public final class SvgPages {

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
      draw(drawn, out);
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
      out.append(
          "<g id=\"" + figure + "\">" + Figures.svg(figure, Drawn.Shade.INK.hex()) + "</g>\n");
    }
    out.append("</defs>\n");
  }

  private static void draw(Drawn drawn, Appendable out) throws IOException {
    if (drawn instanceof Drawn.Text text) {
      String scale = scale(text.size() / Typeface.UNITS);
      out.append("<use xlink:href=\"#t" + text.lettering().number() + "\" transform=\"translate(");
      out.append(Points.text(text.x()) + " " + Points.text(text.y()) + ") scale(" + scale + ")\"");
      out.append(" fill=\"" + text.tone().hex() + "\"/>\n");
    } else if (drawn instanceof Drawn.Rule rule) {
      out.append("<path d=\"M" + Points.text(rule.x1()) + " " + Points.text(rule.y1()));
      out.append("L" + Points.text(rule.x2()) + " " + Points.text(rule.y2()) + "\"");
      out.append(" stroke=\"" + rule.tone().hex() + "\"");
      out.append(" stroke-width=\"" + Points.text(rule.width()) + "\"/>\n");
    } else if (drawn instanceof Drawn.Box box) {
      out.append("<rect x=\"" + Points.text(box.x()) + "\" y=\"" + Points.text(box.y()) + "\"");
      out.append(" width=\"" + Points.text(box.width()) + "\"");
      out.append(" height=\"" + Points.text(box.height()) + "\" ");
      out.append(
          box.line() == 0
              ? "fill=\"" + box.tone().hex() + "\"/>\n"
              : "fill=\"none\" stroke=\""
                  + box.tone().hex()
                  + "\" stroke-width=\""
                  + Points.text(box.line())
                  + "\"/>\n");
    } else if (drawn instanceof Drawn.Symbol sign) {
      String scale = scale(sign.size() / Figure.BOX);
      out.append("<g transform=\"translate(" + Points.text(sign.x()) + " ");
      out.append(Points.text(sign.y()) + ") scale(" + scale + ")\">");
      out.append("<use xlink:href=\"#" + sign.figure() + "\"/></g>\n");
    }
  }

  private static String scale(double factor) {
    return Double.toString(Math.rint(factor * 1e4) / 1e4);
  }
}
