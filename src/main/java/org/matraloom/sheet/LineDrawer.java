package org.matraloom.sheet;

import java.util.List;
import org.matraloom.breath.Breath;
import org.matraloom.paper.Drawn;
import org.matraloom.paper.Drawn.Shade;
import org.matraloom.paper.Figure;
import org.matraloom.picture.Lettering;
import org.matraloom.picture.Typeface;
import org.matraloom.time.Ratio;

/** Draws one line of beats: kriyas above, sollus below, and the bars between. */
final class LineDrawer {

  private static final double BEAT_RULE = 0.4;
  private static final double ANGA_RULE = 1;
  private static final double CYCLE_RULE = 1.8;
  private static final double TURN_RULE = 0.5;
  private static final double TURN_GAP = 2;

  private final PageStyle style;
  private final Typeface typeface;
  private final CellSetter setter;
  private final List<Drawn> page;
  private double freeForTurn;

  LineDrawer(PageStyle style, Typeface typeface, CellSetter setter, List<Drawn> page) {
    this.style = style;
    this.typeface = typeface;
    this.setter = setter;
    this.page = page;
  }

  /** Draws a line. */
  void draw(Row row, SetLine line, double top) {
    freeForTurn = line.left();
    boolean opensCycle = line.cells().get(0).beginsCycle();
    bar(line.left(), top, opensCycle ? Cell.End.AVARTANA : Cell.End.BEAT, opensCycle);
    for (int index = 0; index < line.cells().size(); index++) {
      Cell cell = line.cells().get(index);
      double x = line.edges().get(index);
      double right = line.edges().get(index + 1);
      drawCell(row, cell, line.placed().get(index), x, top, right - x);
      bar(right, top, cell.end(), false);
    }
  }

  private void bar(double x, double top, Cell.End end, boolean opening) {
    double bottom = top + style.lineHeight();
    switch (end) {
      case BEAT -> page.add(new Drawn.Rule(x, top, x, bottom, BEAT_RULE, Shade.RULE));
      case ANGA -> page.add(new Drawn.Rule(x, top, x, bottom, ANGA_RULE, Shade.INK));
      case AVARTANA -> {
        page.add(new Drawn.Rule(x, top, x, bottom, CYCLE_RULE, Shade.INK));
        if (!opening) {
          double inner = x - 3;
          page.add(new Drawn.Rule(inner, top, inner, bottom, BEAT_RULE, Shade.INK));
        }
      }
    }
  }

  private void drawCell(
      Row row, Cell cell, List<CellSetter.Placed> placed, double x, double top, double width) {
    cell.kriya()
        .ifPresent(
            kriya -> {
              double size = cell.again() ? style.sign() * 0.7 : style.sign();
              double y = top + style.sign() - size;
              double left = x + style.cellPadding();
              page.add(new Drawn.Symbol(left, y, size, Figure.of(kriya)));
              if (cell.again()) {
                page.add(new Drawn.Symbol(left + size, y, size, Figure.AGAIN));
              }
            });
    drawMarks(placed, top);
    drawRuns(placed, top);
    row.turns().stream()
        .filter(turn -> cell.holds(turn.beat()))
        .forEach(turn -> drawTurn(turn, cell, placed, x, top));
    row.breathsIn(cell.from(), cell.to())
        .forEach(breath -> drawBreath(breath, cell, placed, x, top, width));
    row.landing()
        .filter(cell::endsWith)
        .ifPresent(beat -> drawLanding(beat, cell, placed, x, top, width));
  }

  private void drawMarks(List<CellSetter.Placed> placed, double top) {
    double base = top + style.baseLine();
    for (CellSetter.Placed one : placed) {
      if (one.mark() instanceof Mark.Karvai && style.large()) {
        double side = setter.squareSide();
        page.add(new Drawn.Box(one.x() + one.prefix(), base - side, side, side, 1.6, Shade.INK));
        continue;
      }
      if (one.mark() instanceof Mark.Karvai) {
        page.add(
            new Drawn.Box(
                one.x() - style.markGap(),
                top + style.lettersTop(),
                one.room(),
                style.lineHeight() - style.lettersTop() - 2,
                0,
                Shade.TINT));
      }
      page.add(
          new Drawn.Text(
              one.x() + one.prefix(), base, style.body(), setter.lettering(one.mark()), Shade.INK));
    }
  }

  /** Marks that are said faster: underlined, or boxed with their speed in the large form. */
  private void drawRuns(List<CellSetter.Placed> placed, double top) {
    int from = 0;
    while (from < placed.size()) {
      int speed = placed.get(from).mark().speed();
      int to = from;
      while (to < placed.size() && placed.get(to).mark().speed() == speed) {
        to++;
      }
      if (speed > 1) {
        CellSetter.Placed last = placed.get(to - 1);
        drawRun(speed, placed.get(from).x(), last.x() + last.width(), top);
      }
      from = to;
    }
  }

  private void drawRun(int speed, double left, double right, double top) {
    if (style.large()) {
      double margin = style.markGap() * 0.5;
      page.add(
          new Drawn.Box(
              left - margin,
              top + style.lettersTop() - 3,
              right - left + 2 * margin,
              style.lineHeight() - style.lettersTop() + 1,
              1.6,
              Shade.INK));
      page.add(
          new Drawn.Text(
              left, top + style.baseLine(), style.body(), setter.speedSign(speed), Shade.INK));
      return;
    }
    double y = top + style.baseLine() + style.body() * 0.2;
    for (int lines = Integer.numberOfTrailingZeros(speed); lines > 0; lines--) {
      page.add(new Drawn.Rule(left, y, right, y, 0.8, Shade.INK));
      y += 1.9;
    }
  }

  /** A thin double bar, and the number of matras in a box above it. */
  private void drawTurn(
      Row.NadaiTurn turn, Cell cell, List<CellSetter.Placed> placed, double x, double top) {
    boolean onBeat = turn.beat().equals(cell.from());
    double at = onBeat ? x : xOf(turn.beat(), placed, x) - style.markGap() - TURN_GAP;
    double bottom = top + style.lineHeight();
    double first = onBeat ? at - 2 * TURN_GAP : at;
    page.add(new Drawn.Rule(first, top, first, bottom, TURN_RULE, Shade.INK));
    page.add(new Drawn.Rule(first + TURN_GAP, top, first + TURN_GAP, bottom, TURN_RULE, Shade.INK));
    double size = style.large() ? style.body() : style.label();
    Lettering figure = typeface.lettering(Integer.toString(turn.matrasPerBeat()), true);
    double width = figure.width(size) + 6;
    double own = onBeat ? afterKriya(cell, x) + 1 : first + TURN_GAP + 2;
    double left = Math.max(own, freeForTurn);
    freeForTurn = left + width + 2;
    page.add(new Drawn.Box(left, top, width, style.sign(), 0.9, Shade.INK));
    page.add(new Drawn.Text(left + 3, top + style.sign() - 2, size, figure, Shade.INK));
  }

  private void drawBreath(
      Breath breath,
      Cell cell,
      List<CellSetter.Placed> placed,
      double x,
      double top,
      double width) {
    double at = between(breath.startBeat(), cell, placed, x, width);
    double size = style.sign() * 0.75;
    double inCell = Math.max(afterKriya(cell, x), Math.min(at, x + width - size - 1));
    page.add(new Drawn.Symbol(inCell, top + style.lettersTop() - size, size, Figure.BREATH));
  }

  /** From where on the strip of the kriyas is free in a cell. */
  private double afterKriya(Cell cell, double x) {
    double signs = cell.again() ? style.sign() * 1.4 : style.sign();
    return cell.kriya().isEmpty() ? x : x + style.cellPadding() + signs + 2;
  }

  private void drawLanding(
      Ratio beat, Cell cell, List<CellSetter.Placed> placed, double x, double top, double width) {
    double at = beat.equals(cell.to()) ? x + width : between(beat, cell, placed, x, width);
    page.add(new Drawn.Symbol(at + 3, top + style.lettersTop(), style.sign(), Figure.LANDING));
  }

  /** Where the mark on a beat begins; the edge of the cell if none does. */
  private static double xOf(Ratio beat, List<CellSetter.Placed> placed, double edge) {
    return placed.stream()
        .filter(one -> one.mark().beat().equals(beat))
        .mapToDouble(CellSetter.Placed::x)
        .findFirst()
        .orElse(edge);
  }

  /** Where a time lies between the marks around it. */
  private static double between(
      Ratio beat, Cell cell, List<CellSetter.Placed> placed, double x, double width) {
    for (CellSetter.Placed one : placed) {
      Mark mark = one.mark();
      if (beat.compareTo(mark.beat()) >= 0 && beat.compareTo(mark.endBeat()) < 0) {
        double part = beat.minus(mark.beat()).dividedBy(mark.beats()).toDouble();
        return one.x() + part * one.room();
      }
    }
    double inProportion = x + width * beat.minus(cell.from()).dividedBy(cell.beats()).toDouble();
    return placed.isEmpty()
        ? inProportion
        : Math.max(inProportion, placed.get(placed.size() - 1).x() + lastRoom(placed));
  }

  private static double lastRoom(List<CellSetter.Placed> placed) {
    return placed.get(placed.size() - 1).room();
  }
}
