package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.matraloom.picture.Typeface;
import org.matraloom.score.Avartana;
import org.matraloom.score.Kriya;
import org.matraloom.sheet.Drawn.Shade;

/** Sets a sheet on A4 pages: title block, rows with their headings and sums, the landing. */
final class PageSetter {

  private static final double LEADING = PageFlow.LEADING;
  private static final double SUM_GAP = 16;
  private static final int MOST_SUMS_BESIDE = 2;

  private final Sheet sheet;
  private final SheetWords words;
  private final Avartana avartana;
  private final PageStyle style;
  private final Typeface typeface;
  private final CellSetter setter;
  private final PageFlow flow;

  private PageSetter(Sheet sheet, Typeface typeface) {
    this.sheet = sheet;
    this.words = new SheetWords(sheet);
    this.avartana = sheet.performance().avartana();
    this.style = PageStyle.of(sheet.options().large());
    this.typeface = typeface;
    this.setter = new CellSetter(style, typeface);
    this.flow = new PageFlow(style, typeface);
  }

  /** The pages of a sheet, each a list of what is drawn on it. */
  static List<List<Drawn>> set(Sheet sheet, Typeface typeface) {
    return new PageSetter(sheet, typeface).set();
  }

  private List<List<Drawn>> set() {
    titleBlock();
    rows(sheet.rows(), true);
    new PageClosing(sheet, style, flow).set();
    if (sheet.options().cues()) {
      cues();
    }
    flow.footers(words.title());
    return flow.pages();
  }

  private void titleBlock() {
    flow.paragraph(words.title(), style.title(), true);
    flow.paragraph(words.setting() + ".", style.label(), false);
    flow.paragraph(words.places() + ".", style.label(), false);
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
    double widest = rows.stream().mapToDouble(this::widest).reduce(1, Math::max);
    for (Row row : rows) {
      int most = (int) Math.max(1, Math.floor(style.gridWidth() / widest(row)));
      LineBreaks breaks = LineBreaks.of(avartana.goingOnAt(row.startBeat()), most);
      double cellWidth = Math.min(style.gridWidth() / breaks.longest(), widest * 2);
      row(row, breaks, cellWidth, withSums);
    }
  }

  /** The least width of the densest beat of a row; a dense row does not make others long. */
  private double widest(Row row) {
    return row.cells().stream().mapToDouble(setter::naturalWidth).reduce(1, Math::max);
  }

  private void row(Row row, LineBreaks breaks, double cellWidth, boolean withSums) {
    List<List<Cell>> lines = lines(row, breaks);
    String heading = words.heading(row);
    List<String> headingLines = new ArrayList<>();
    for (String told : withSums ? words.above(row) : List.<String>of()) {
      headingLines.addAll(flow.wrap(told, style.label(), true));
    }
    headingLines.addAll(heading.isEmpty() ? List.of() : flow.wrap(heading, style.label(), true));
    double step = style.lineHeight() + style.lineGap();
    double headingHeight =
        headingLines.isEmpty() ? 0 : (headingLines.size() * LEADING + 0.5) * style.label();
    List<String> below = withSums ? sumsBelow(row) : List.of();
    double belowHeight = below.size() * style.label() * LEADING;
    double whole = headingHeight + lines.size() * step + belowHeight;
    boolean fitsAPage = whole < PageStyle.HEIGHT - PageStyle.TOP - PageStyle.BOTTOM;
    flow.need(fitsAPage ? whole : headingHeight + step);
    if (!headingLines.isEmpty()) {
      flow.skip(0.4 * style.label());
      headingLines.forEach(line -> flow.putLine(line, style.label(), true));
      flow.skip(0.1 * style.label());
    }
    for (int index = 0; index < lines.size(); index++) {
      flow.need(index == lines.size() - 1 ? step + belowHeight : step);
      if (index == 0) {
        number(row);
      }
      LineDrawer drawer = new LineDrawer(style, typeface, setter, flow.page());
      drawer.draw(row, lines.get(index), gridLeft(), flow.y(), cellWidth);
      boolean last = index == lines.size() - 1;
      if (withSums && last) {
        sums(row, below);
      }
      flow.skip(step);
    }
  }

  /** The lines of a row; a beat that is wider than a line goes on in the next. */
  private List<List<Cell>> lines(Row row, LineBreaks breaks) {
    List<List<Cell>> lines = new ArrayList<>();
    for (List<Cell> line : breaks.lines(row, avartana)) {
      if (line.size() > 1) {
        lines.add(line);
      } else {
        setter.cut(line.get(0), style.gridWidth()).forEach(part -> lines.add(List.of(part)));
      }
    }
    return lines;
  }

  private double gridLeft() {
    return PageStyle.LEFT + style.numberColumn();
  }

  private void number(Row row) {
    String number = Integer.toString(row.number());
    double x = gridLeft() - 5 - flow.widthOf(number, style.label(), false);
    flow.put(number, x, flow.y() + style.baseLine(), style.label(), false, Shade.QUIET);
  }

  private static List<String> sumsOf(Row row) {
    List<String> sums = new ArrayList<>();
    if (!row.label().isEmpty()) {
      sums.add(row.label());
    }
    row.parts().forEach(part -> sums.add(part.sum()));
    return sums;
  }

  /** The lines of sums that do not fit right of a row and so stand below it. */
  private List<String> sumsBelow(Row row) {
    List<String> sums = sumsOf(row);
    boolean fits =
        sums.size() <= MOST_SUMS_BESIDE
            && sums.stream()
                .allMatch(
                    sum -> flow.widthOf(sum, style.label(), false) + SUM_GAP <= style.sumColumn());
    return fits ? List.of() : flow.wrap(String.join(" · ", sums), style.label(), false);
  }

  private void sums(Row row, List<String> below) {
    double line = style.label() * LEADING;
    if (below.isEmpty()) {
      List<String> sums = sumsOf(row);
      double base = flow.y() + style.baseLine() - (sums.size() - 1) * line;
      for (String sum : sums) {
        putRight(sum, base);
        base += line;
      }
    } else {
      for (String sum : below) {
        flow.skip(line);
        putRight(sum, flow.y() + style.lineHeight());
      }
    }
  }

  private void putRight(String text, double base) {
    double x = PageStyle.WIDTH - PageStyle.RIGHT - flow.widthOf(text, style.label(), false);
    flow.put(text, x, base, style.label(), false, Shade.QUIET);
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
