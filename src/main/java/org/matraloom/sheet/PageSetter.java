package org.matraloom.sheet;

import java.util.List;
import java.util.Set;
import org.matraloom.paper.Drawn;
import org.matraloom.paper.Drawn.Shade;
import org.matraloom.paper.Figure;
import org.matraloom.picture.Typeface;
import org.matraloom.score.Avartana;
import org.matraloom.score.Kriya;

/** Sets a sheet on A4 pages: title block, rows with their headings and sums, the landing. */
final class PageSetter {

  private static final double LEADING = PageFlow.LEADING;
  private static final int MOST_TIGHTENED = 6;

  private final Sheet sheet;
  private final SheetWords words;
  private final Avartana avartana;
  private final PageStyle style;
  private final Typeface typeface;
  private final PageFlow flow;

  private PageSetter(Sheet sheet, Typeface typeface, PageStyle style) {
    this.sheet = sheet;
    this.words = new SheetWords(sheet);
    this.avartana = sheet.performance().avartana();
    this.style = style;
    this.typeface = typeface;
    this.flow = new PageFlow(style, typeface);
  }

  /** The pages of a sheet, each a list of what is drawn on it. */
  static List<List<Drawn>> set(Sheet sheet, Typeface typeface) {
    PageSetter set = fewest(sheet, typeface);
    set.flow.footers(set.words.title());
    return set.flow.pages();
  }

  /** With less space between the lines where that saves a page of a short piece. */
  private static PageSetter fewest(Sheet sheet, Typeface typeface) {
    PageStyle usual = PageStyle.of(sheet.options().large());
    PageStyle style = isSpeeds(sheet) ? usual.aligned() : usual;
    PageSetter best = null;
    for (PageStyle tried : style.tighter()) {
      PageSetter setter = new PageSetter(sheet, typeface, tried);
      setter.bare();
      int pages = setter.flow.pages().size();
      if (best == null || pages < best.flow.pages().size()) {
        best = setter;
      }
      if (pages == 1 || pages > MOST_TIGHTENED) {
        break;
      }
    }
    return best;
  }

  private static boolean isSpeeds(Sheet sheet) {
    return sheet.options().lines() == SheetOptions.Lines.SPEEDS;
  }

  /** The pages of a sheet without a line at their foot. */
  static List<List<Drawn>> setBare(Sheet sheet, Typeface typeface) {
    return fewest(sheet, typeface).flow.pages();
  }

  private void bare() {
    titleBlock();
    rows(sheet.rows(), !isSpeeds(sheet));
    new PageClosing(sheet, style, flow).set();
    if (sheet.options().cues()) {
      cues();
    }
  }

  private void titleBlock() {
    flow.paragraph(words.title(), style.title(), true);
    flow.paragraph(words.setting() + ". " + words.places() + ".", style.label(), false);
    String loss = sheet.options().writing().script().loss();
    if (!loss.isEmpty()) {
      flow.paragraph(loss, style.label(), false);
    }
    legend();
    flow.skip(style.label() * 0.6);
  }

  /** The kriyas of the tala with their names, each once. */
  private void legend() {
    Set<Kriya> kriyas = words.kriyas();
    double x = PageStyle.LEFT;
    double line = Math.max(style.sign(), style.label() * LEADING) + 3;
    flow.skip(3);
    for (Kriya kriya : kriyas) {
      String name = words.kriya(kriya);
      double nameWidth = flow.widthOf(name, style.label(), false);
      double width = style.sign() + 4 + nameWidth + style.label() * 1.2;
      if (x + width > PageStyle.WIDTH - PageStyle.RIGHT && x > PageStyle.LEFT) {
        x = PageStyle.LEFT;
        flow.skip(line);
      }
      flow.page().add(new Drawn.Symbol(x, flow.y(), style.sign(), Figure.of(kriya)));
      double base = flow.y() + style.sign() * 0.5 + style.label() * 0.35;
      flow.put(name, x + style.sign() + 4, base, style.label(), false, Shade.INK);
      x += width;
    }
    flow.skip(line);
  }

  private void rows(List<Row> rows, boolean withSums) {
    new RowSetter(sheet, style, typeface, flow).set(rows, withSums);
  }

  private void cues() {
    flow.skip(style.label());
    flow.need(style.label() * 8);
    flow.paragraph("What falls on each kriya", style.label() * 1.2, true);
    flow.paragraph(
        "In brackets: the sound of that sollu rings on or has begun before. A dot: silence.",
        style.label(),
        false);
    rows(CueMap.rows(sheet), false);
  }
}
