package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.matraloom.score.Avartana;
import org.matraloom.score.Kriya;
import org.matraloom.sheet.Drawn.Tone;

/** Sets a sheet on A4 pages: title block, rows with their headings and sums, the landing. */
final class PageSetter {

  private static final double LEADING = 1.32;
  private static final double SPACE = 0.26;

  private final Sheet sheet;
  private final SheetWords words;
  private final Avartana avartana;
  private final PageStyle style;
  private final Typeface typeface;
  private final CellSetter setter;
  private final List<List<Drawn>> pages = new ArrayList<>();
  private List<Drawn> page = new ArrayList<>();
  private double y;

  private PageSetter(Sheet sheet, Typeface typeface) {
    this.sheet = sheet;
    this.words = new SheetWords(sheet);
    this.avartana = sheet.performance().composition().avartana();
    this.style = PageStyle.of(sheet.options().large());
    this.typeface = typeface;
    this.setter = new CellSetter(style, typeface);
  }

  /** The pages of a sheet, each a list of what is drawn on it. */
  static List<List<Drawn>> set(Sheet sheet, Typeface typeface) {
    return new PageSetter(sheet, typeface).set();
  }

  private List<List<Drawn>> set() {
    newPage();
    titleBlock();
    rows(sheet.rows(), true);
    landing();
    if (sheet.options().cues()) {
      cues();
    }
    footers();
    return pages;
  }

  private void newPage() {
    page = new ArrayList<>();
    pages.add(page);
    y = PageStyle.TOP;
  }

  private void need(double height) {
    if (y + height > PageStyle.HEIGHT - PageStyle.BOTTOM && y > PageStyle.TOP) {
      newPage();
    }
  }

  private void titleBlock() {
    paragraph(words.title(), style.title(), true, Tone.INK);
    paragraph(words.setting() + ".", style.label(), false, Tone.INK);
    paragraph(words.places() + ".", style.label(), false, Tone.INK);
    String loss = sheet.options().writing().script().loss();
    if (!loss.isEmpty()) {
      paragraph(loss, style.label(), false, Tone.INK);
    }
    legend();
    y += style.label() * 0.6;
  }

  /** The kriyas of the tala with their names, each once. */
  private void legend() {
    Set<Kriya> kriyas = new LinkedHashSet<>(avartana.kriyas());
    double x = PageStyle.LEFT;
    double line = Math.max(style.sign(), style.label() * LEADING) + 3;
    y += 3;
    for (Kriya kriya : kriyas) {
      String name = words.kriya(kriya);
      double nameWidth = widthOf(name, style.label(), false);
      double width = style.sign() + 4 + nameWidth + style.label() * 1.2;
      if (x + width > PageStyle.WIDTH - PageStyle.RIGHT && x > PageStyle.LEFT) {
        x = PageStyle.LEFT;
        y += line;
      }
      page.add(new Drawn.Sign(x, y, style.sign(), Figure.of(kriya)));
      double base = y + style.sign() * 0.5 + style.label() * 0.35;
      put(name, x + style.sign() + 4, base, style.label(), false, Tone.INK);
      x += width;
    }
    y += line;
  }

  private void rows(List<Row> rows, boolean withSums) {
    double widest =
        rows.stream()
            .flatMap(row -> row.cells().stream())
            .mapToDouble(setter::naturalWidth)
            .max()
            .orElse(1);
    int most = (int) Math.max(1, Math.floor(style.gridWidth() / widest));
    LineBreaks breaks = LineBreaks.of(avartana, most);
    double cellWidth = Math.min(style.gridWidth() / breaks.longest(), widest * 2);
    for (Row row : rows) {
      row(row, breaks, cellWidth, withSums);
    }
  }

  private void row(Row row, LineBreaks breaks, double cellWidth, boolean withSums) {
    List<List<Cell>> lines = breaks.lines(row, avartana);
    String heading = words.heading(row);
    List<String> headingLines = heading.isEmpty() ? List.of() : wrap(heading, style.label(), true);
    double step = style.lineHeight() + style.lineGap();
    double headingHeight =
        headingLines.isEmpty() ? 0 : (headingLines.size() * LEADING + 0.5) * style.label();
    double whole = headingHeight + lines.size() * step;
    boolean fitsAPage = whole < PageStyle.HEIGHT - PageStyle.TOP - PageStyle.BOTTOM;
    need(fitsAPage ? whole : headingHeight + step);
    if (!headingLines.isEmpty()) {
      y += 0.4 * style.label();
      headingLines.forEach(line -> putLine(line, style.label(), true, Tone.INK));
      y += 0.1 * style.label();
    }
    for (int index = 0; index < lines.size(); index++) {
      need(step);
      if (index == 0) {
        number(row);
      }
      LineDrawer drawer = new LineDrawer(style, typeface, setter, page);
      drawer.draw(row, lines.get(index), gridLeft(), y, cellWidth);
      boolean last = index == lines.size() - 1;
      if (withSums && last) {
        sums(row);
      }
      y += step;
    }
  }

  private double gridLeft() {
    return PageStyle.LEFT + style.numberColumn();
  }

  private void number(Row row) {
    String number = Integer.toString(row.number());
    double x = gridLeft() - 5 - widthOf(number, style.label(), false);
    put(number, x, y + style.baseLine(), style.label(), false, Tone.QUIET);
  }

  /** The sums of a row, right of its last line or, in the large form, below it. */
  private void sums(Row row) {
    List<String> sums = new ArrayList<>();
    if (!row.label().isEmpty()) {
      sums.add(row.label());
    }
    row.parts().forEach(part -> sums.add(part.sum()));
    double right = PageStyle.WIDTH - PageStyle.RIGHT;
    double base = y + style.baseLine();
    if (style.sumColumn() == 0) {
      base += style.lineHeight() - style.baseLine() + style.label() * LEADING;
      y += sums.size() * style.label() * LEADING;
    } else {
      base -= (sums.size() - 1) * style.label() * LEADING;
    }
    for (String sum : sums) {
      double x = right - widthOf(sum, style.label(), false);
      put(sum, x, base, style.label(), false, Tone.QUIET);
      base += style.label() * LEADING;
    }
  }

  private void landing() {
    double height = style.label() * LEADING * 5;
    need(height);
    y += style.label() * 0.6;
    page.add(
        new Drawn.Rule(PageStyle.LEFT, y, PageStyle.WIDTH - PageStyle.RIGHT, y, 0.6, Tone.INK));
    y += style.label() * 0.5;
    for (int index = 0; index < sheet.closing().size(); index++) {
      boolean verdict = index == sheet.closing().size() - 1;
      paragraph(sheet.closing().get(index), style.label(), verdict, Tone.INK);
    }
    if (!sheet.options().breaths().isEmpty()) {
      page.add(new Drawn.Sign(PageStyle.LEFT, y + 1, style.label(), Figure.BREATH));
      Lettering note =
          typeface.lettering("breathe here, if it suits you; stop if it strains", false);
      page.add(
          new Drawn.Text(
              PageStyle.LEFT + style.label() * 1.4,
              y + style.label(),
              style.label(),
              note,
              Tone.INK));
      y += style.label() * LEADING;
    }
  }

  private void cues() {
    y += style.label();
    need(style.label() * 8);
    paragraph("What falls on each kriya", style.label() * 1.2, true, Tone.INK);
    paragraph(
        "In brackets: the sound of that sollu rings on or has begun before. A dot: silence.",
        style.label(),
        false,
        Tone.INK);
    rows(CueMap.rows(sheet), false);
  }

  private void footers() {
    for (int index = 0; index < pages.size() && pages.size() > 1; index++) {
      String text = words.title() + ", page " + (index + 1) + " of " + pages.size();
      page = pages.get(index);
      double x = PageStyle.WIDTH - PageStyle.RIGHT - widthOf(text, style.label(), false);
      put(text, x, PageStyle.HEIGHT - PageStyle.BOTTOM * 0.5, style.label(), false, Tone.QUIET);
    }
  }

  private void paragraph(String text, double size, boolean bold, Tone tone) {
    for (String line : wrap(text, size, bold)) {
      need(size * LEADING);
      putLine(line, size, bold, tone);
    }
  }

  private void putLine(String line, double size, boolean bold, Tone tone) {
    put(line, PageStyle.LEFT, y + size, size, bold, tone);
    y += size * LEADING;
  }

  /** Draws a text word by word, since most words come again. */
  private void put(String text, double left, double base, double size, boolean bold, Tone tone) {
    double x = left;
    for (String word : text.split(" ")) {
      Lettering lettering = typeface.lettering(word, bold);
      page.add(new Drawn.Text(x, base, size, lettering, tone));
      x += lettering.width(size) + size * SPACE;
    }
  }

  private double widthOf(String text, double size, boolean bold) {
    double width = -size * SPACE;
    for (String word : text.split(" ")) {
      width += typeface.lettering(word, bold).width(size) + size * SPACE;
    }
    return width;
  }

  private List<String> wrap(String text, double size, boolean bold) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && widthOf(longer, size, bold) > style.textWidth()) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }
}
