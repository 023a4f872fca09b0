package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.matraloom.paper.Drawn;
import org.matraloom.paper.Drawn.Shade;
import org.matraloom.picture.Typeface;
import org.matraloom.score.Avartana;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** Sets rows on pages: their lines, what stands above each line, and the sums. */
final class RowSetter {

  private static final double LEADING = PageFlow.LEADING;
  private static final double SUM_GAP = 6;
  private static final double LANDING_GAP = 5;
  private static final double STEM_RULE = 2.4;
  private static final int MOST_SUMS_BESIDE = 2;
  private static final int MOST_HEADINGS = 4;

  /** Above what is told, in letters. */
  private static final double TOLD_GAP = 0.4;

  private final SheetWords words;
  private final Avartana avartana;
  private final PageStyle style;
  private final Typeface typeface;
  private final PageFlow flow;
  private final Set<Ratio> stems;
  private final Map<PageStyle, CellSetter> setters = new HashMap<>();

  /** One line with what stands above it. */
  private record Whole(SetLine line, PageStyle style, LineHeadings headings, boolean tagged) {
    double height() {
      return headings.height() + bareHeight();
    }

    double bareHeight() {
      return (tagged ? style.lane() : 0) + style.lineHeight() + gap();
    }

    double gap() {
      return tagged ? style.taggedGap() : style.lineGap();
    }
  }

  RowSetter(Sheet sheet, PageStyle style, Typeface typeface, PageFlow flow) {
    this.words = new SheetWords(sheet);
    this.avartana = sheet.performance().avartana();
    this.style = style;
    this.typeface = typeface;
    this.flow = flow;
    this.stems =
        sheet.performance().rounds().stream()
            .map(Span::startBeat)
            .filter(beat -> !beat.isWhole())
            .collect(Collectors.toSet());
  }

  void set(List<Row> rows, boolean withSums) {
    double widest = rows.stream().mapToDouble(this::widest).reduce(1, Math::max);
    List<RowLines> lines =
        rows.stream()
            .map(row -> RowLines.of(row, avartana.goingOnAt(row.startBeat()), style, this::setter))
            .toList();
    int longest = lines.stream().mapToInt(RowLines::longest).max().orElse(1);
    for (int index = 0; index < rows.size(); index++) {
      int beats = style.isAligned() ? longest : lines.get(index).longest();
      double beatWidth = Math.min(style.gridWidth() / beats, widest * 2);
      set(rows.get(index), whole(rows.get(index), lines.get(index), beatWidth), withSums);
    }
  }

  private CellSetter setter(PageStyle ofStyle) {
    return setters.computeIfAbsent(ofStyle, each -> new CellSetter(each, typeface, stems));
  }

  private double widest(Row row) {
    return row.cells().stream().mapToDouble(setter(style)::naturalWidth).reduce(1, Math::max);
  }

  private List<Whole> whole(Row row, RowLines lines, double beatWidth) {
    Map<Ratio, String> headings = words.headings(row);
    List<Whole> whole = new ArrayList<>();
    for (List<Cell> cells : lines.lines()) {
      SetLine line = SetLine.of(cells, gridLeft(), beatWidth, setter(lines.style()));
      LineHeadings above = new LineHeadings(style, flow, MOST_HEADINGS);
      headings.forEach((beat, text) -> above.add(line, beat, text));
      whole.add(new Whole(line, lines.style(), above, TagDrawer.isNeeded(row, line)));
    }
    return whole;
  }

  private void set(Row row, List<Whole> lines, boolean withSums) {
    List<String> below = withSums ? sumsBelow(row, lines.get(lines.size() - 1)) : List.of();
    double belowHeight = below.size() * style.label() * LEADING;
    List<String> told = withSums ? told(row) : List.of();
    double toldHeight = told.isEmpty() ? 0 : (told.size() * LEADING + TOLD_GAP) * style.label();
    double all = toldHeight + lines.stream().mapToDouble(Whole::height).sum() + belowHeight;
    boolean whole = !style.large() && all < PageStyle.HEIGHT - PageStyle.TOP - PageStyle.BOTTOM;
    flow.need(whole ? all : toldHeight + lines.get(0).height());
    if (!told.isEmpty()) {
      flow.skip(TOLD_GAP * style.label());
      told.forEach(line -> flow.putLine(line, style.label(), true));
    }
    for (int index = 0; index < lines.size(); index++) {
      Whole line = lines.get(index);
      boolean last = index == lines.size() - 1;
      flow.need(last ? line.height() + belowHeight : line.height());
      draw(row, line);
      if (index == 0) {
        number(row);
      }
      if (withSums && last) {
        sums(row, below);
      }
      flow.skip(line.style().lineHeight() + line.gap());
    }
  }

  /** Parts that begin with a row, and words to students. */
  private List<String> told(Row row) {
    return words.above(row).stream()
        .flatMap(text -> flow.wrap(text, style.label(), true).stream())
        .toList();
  }

  /** Draws a line and leaves the flow at the top of its beats. */
  private void draw(Row row, Whole whole) {
    whole.headings().draw();
    double stemTop = flow.y();
    if (whole.tagged()) {
      double right = PageStyle.WIDTH - PageStyle.RIGHT;
      new TagDrawer(whole.style(), typeface, right, flow.page()).draw(row, whole.line(), flow.y());
      flow.skip(whole.style().lane());
    }
    for (RoundPart part : row.parts()) {
      if (part.opensHere() && whole.line().holds(part.from()) && !begins(row, part)) {
        stem(row, whole, part.from(), stemTop);
      }
    }
    CellSetter setter = setter(whole.style());
    new LineDrawer(whole.style(), typeface, setter, flow.page()).draw(row, whole.line(), flow.y());
  }

  private static boolean begins(Row row, RoundPart part) {
    return part.from().equals(row.startBeat());
  }

  /** The thick stem at which a round begins inside a row. */
  private void stem(Row row, Whole whole, Ratio beat, double top) {
    boolean turns = row.turns().stream().anyMatch(turn -> turn.beat().equals(beat));
    double back = beat.isWhole() ? 0 : whole.style().markGap() * (turns ? 3 : 0.5);
    double x = whole.line().edgeOf(beat) - back;
    double bottom = flow.y() + whole.style().lineHeight();
    flow.page().add(new Drawn.Rule(x, top, x, bottom, STEM_RULE, Shade.INK));
  }

  private double gridLeft() {
    return PageStyle.LEFT + style.numberColumn();
  }

  private void number(Row row) {
    String number = Integer.toString(row.number());
    double x = gridLeft() - 8 - flow.widthOf(number, style.label(), false);
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
  private List<String> sumsBelow(Row row, Whole last) {
    List<String> sums = sumsOf(row);
    double drop = row.landing().isPresent() ? style.sign() + LANDING_GAP : 0;
    double room = PageStyle.WIDTH - PageStyle.RIGHT - last.line().right() - drop - SUM_GAP;
    boolean fits =
        sums.size() <= MOST_SUMS_BESIDE
            && sums.stream().allMatch(sum -> flow.widthOf(sum, style.label(), false) <= room);
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
}
