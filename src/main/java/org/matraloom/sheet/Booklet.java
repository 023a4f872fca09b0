package org.matraloom.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.matraloom.paper.Drawn;
import org.matraloom.paper.Drawn.Shade;
import org.matraloom.picture.Typeface;
import org.matraloom.picture.Xml;

/**
 * Several sheets in one file, after a page that lists them.
 *
 * @param title what stands on the first page
 * @param sheets its pieces in order, at least one, all in one script and one print
 */
public record Booklet(String title, List<Sheet> sheets) {

  private static final double ROW = 1.7;

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if there is no piece
   */
  public Booklet {
    sheets = List.copyOf(sheets);
    if (sheets.isEmpty()) {
      throw new IllegalArgumentException("a booklet has one piece at least");
    }
  }

  /**
   * Writes it as PDF: the contents, then each piece from a page of its own.
   *
   * @param out where it goes
   * @throws IOException if it cannot be written
   */
  public void writePdf(OutputStream out) throws IOException {
    PdfPages.write(title, pages(new Typeface()), out);
  }

  /** The pages, numbered through at their feet. */
  List<List<Drawn>> pages(Typeface typeface) {
    PageStyle style = PageStyle.of(sheets.get(0).options().large());
    List<List<List<Drawn>>> pieces =
        sheets.stream().map(sheet -> PageSetter.setBare(sheet, typeface)).toList();
    int first = 1 + contents(style, typeface, pieces, 0).pages().size();
    PageFlow flow = contents(style, typeface, pieces, first);
    pieces.forEach(piece -> piece.forEach(flow::append));
    flow.footers(title);
    return flow.pages();
  }

  private PageFlow contents(
      PageStyle style, Typeface typeface, List<List<List<Drawn>>> pieces, int firstPage) {
    PageFlow flow = new PageFlow(style, typeface);
    flow.paragraph(title, style.title(), true);
    flow.skip(style.label());
    int page = firstPage;
    for (int index = 0; index < sheets.size(); index++) {
      SheetWords words = new SheetWords(sheets.get(index));
      String number = Integer.toString(page);
      double right = PageStyle.WIDTH - PageStyle.RIGHT - flow.widthOf(number, style.body(), false);
      flow.need(2 * style.body() * ROW);
      double base = flow.y() + style.body();
      flow.put(words.title(), PageStyle.LEFT, base, style.body(), true, Shade.INK);
      flow.put(number, right, base, style.body(), false, Shade.INK);
      flow.skip(style.body() * ROW * 0.75);
      flow.paragraph(words.setting() + ".", style.label(), false);
      flow.skip(style.label() * 0.5);
      page += pieces.get(index).size();
    }
    return flow;
  }

  /**
   * Writes it as one HTML file, the contents with links first.
   *
   * @param out where it goes
   * @throws IOException if it cannot be written
   */
  public void writeHtml(Appendable out) throws IOException {
    HtmlSheet.open(title, sheets.get(0), out);
    out.append("<main>\n<nav class=\"contents\">\n<h1>" + Xml.escape(title) + "</h1>\n<ol>\n");
    for (int index = 0; index < sheets.size(); index++) {
      SheetWords words = new SheetWords(sheets.get(index));
      out.append("<li><a href=\"#piece-" + (index + 1) + "\">" + Xml.escape(words.title()));
      out.append("</a><br>" + Xml.escape(words.setting()) + "</li>\n");
    }
    out.append("</ol>\n</nav>\n");
    for (int index = 0; index < sheets.size(); index++) {
      out.append("<article class=\"piece\" id=\"piece-" + (index + 1) + "\">\n");
      HtmlSheet.body(sheets.get(index), "p" + (index + 1) + "-", out);
      out.append("</article>\n");
    }
    out.append("</main>\n</body>\n</html>\n");
  }

  /**
   * The titles of its pieces.
   *
   * @return in order
   */
  public List<String> titles() {
    List<String> titles = new ArrayList<>();
    sheets.forEach(sheet -> titles.add(new SheetWords(sheet).title()));
    return titles;
  }
}
