package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.matraloom.picture.Lettering;
import org.matraloom.picture.Typeface;
import org.matraloom.time.Ratio;

/**
 * Sets the marks of one cell: each as wide as it is, and what is left over goes to the marks in
 * proportion to their time.
 */
final class CellSetter {

  private static final String KARVAI = ",";
  private static final String SILENCE = ".";
  private static final double LANDING_GAP = 5;

  /**
   * A mark in its place.
   *
   * @param mark the mark
   * @param x where it begins
   * @param room how far it is to the next mark or the end of the cell
   * @param width how wide it is drawn
   * @param prefix how much of that is room for a stem or, in the large form, the sign of its speed
   */
  record Placed(Mark mark, double x, double room, double width, double prefix) {}

  private final PageStyle style;
  private final Typeface typeface;
  private final Set<Ratio> stems;

  CellSetter(PageStyle style, Typeface typeface) {
    this(style, typeface, Set.of());
  }

  /**
   * A setter that leaves room for stems.
   *
   * @param stems where rounds begin inside a beat, in beats
   */
  CellSetter(PageStyle style, Typeface typeface, Set<Ratio> stems) {
    this.style = style;
    this.typeface = typeface;
    this.stems = stems;
  }

  /** The least width of a cell. */
  double naturalWidth(Cell cell) {
    double width = 2 * style.cellPadding();
    for (int index = 0; index < cell.marks().size(); index++) {
      width += widthOf(cell, index) + style.markGap();
    }
    return width + (landsInside(cell) ? style.sign() + LANDING_GAP : 0);
  }

  /** Whether what is said ends inside a cell, so that the sign of the landing stands there. */
  private static boolean landsInside(Cell cell) {
    int count = cell.marks().size();
    return count > 0 && cell.marks().get(count - 1).endBeat().compareTo(cell.to()) < 0;
  }

  /** Cuts a cell into parts that are not wider than a line; most cells stay whole. */
  List<Cell> cut(Cell cell, double lineWidth) {
    List<Cell> parts = new ArrayList<>();
    Cell rest = cell;
    while (naturalWidth(rest) > lineWidth && rest.marks().size() > 1) {
      int most = 1;
      while (most + 1 < rest.marks().size() && naturalWidth(rest.before(most + 1)) <= lineWidth) {
        most++;
      }
      parts.add(rest.before(most));
      rest = rest.after(most);
    }
    parts.add(rest);
    return parts;
  }

  /** Sets a cell that begins at x and is at least as wide as it must be. */
  List<Placed> place(Cell cell, double x, double width) {
    List<Placed> placed = new ArrayList<>();
    double spare = Math.max(0, width - naturalWidth(cell));
    double cellBeats = cell.beats().toDouble();
    double at = x + style.cellPadding();
    Ratio reached = cell.from();
    for (int index = 0; index < cell.marks().size(); index++) {
      Mark mark = cell.marks().get(index);
      at += spare * mark.beat().minus(reached).toDouble() / cellBeats;
      Ratio end = mark.endBeat().compareTo(cell.to()) < 0 ? mark.endBeat() : cell.to();
      double own = widthOf(cell, index);
      double room = own + style.markGap() + spare * end.minus(mark.beat()).toDouble() / cellBeats;
      placed.add(new Placed(mark, at, room, own, prefixWidth(cell, index)));
      at += room;
      reached = end;
    }
    return placed;
  }

  /** The lettering of a mark, where it is drawn as one. */
  Lettering lettering(Mark mark) {
    if (mark instanceof Mark.Said said) {
      return typeface.lettering(said.text(), said.opens());
    }
    return typeface.lettering(mark instanceof Mark.Karvai ? KARVAI : SILENCE, true);
  }

  /** The sign of a speed, as in 2×. */
  Lettering speedSign(int speed) {
    return typeface.lettering(speed + "\u00d7", true);
  }

  /** The side of the square that shows a karvai in the large form. */
  double squareSide() {
    return style.body() * 0.55;
  }

  private double widthOf(Cell cell, int index) {
    Mark mark = cell.marks().get(index);
    double own =
        style.large() && mark instanceof Mark.Karvai
            ? squareSide()
            : lettering(mark).width(style.body());
    return own + prefixWidth(cell, index);
  }

  private double prefixWidth(Cell cell, int index) {
    double stem = stems.contains(cell.marks().get(index).beat()) ? style.stemRoom() : 0;
    int speed = cell.marks().get(index).speed();
    boolean begins = index == 0 || cell.marks().get(index - 1).speed() != speed;
    return style.large() && speed > 1 && begins
        ? stem + speedSign(speed).width(style.body()) + style.markGap()
        : stem;
  }
}
