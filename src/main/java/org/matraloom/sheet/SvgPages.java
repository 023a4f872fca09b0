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
      out.append(drawn.told(SvgThing.INSTANCE));
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
}
