package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.time.Ratio;

/**
 * A line of beats in its place: equal beats have equal widths, a dense one has the width it needs.
 *
 * @param cells its cells
 * @param edges where each begins, and where the last one ends, in points
 * @param placed the marks of each cell
 */
record SetLine(List<Cell> cells, List<Double> edges, List<List<CellSetter.Placed>> placed) {

  SetLine {
    cells = List.copyOf(cells);
    edges = List.copyOf(edges);
    placed = List.copyOf(placed);
  }

  /**
   * Sets a line.
   *
   * @param cells its cells
   * @param left where it begins, in points
   * @param beatWidth how wide a beat is where every cell has room
   * @param setter sets the cells
   */
  static SetLine of(List<Cell> cells, double left, double beatWidth, CellSetter setter) {
    double share = share(cells, beatWidth, setter);
    List<Double> edges = new ArrayList<>();
    List<List<CellSetter.Placed>> placed = new ArrayList<>();
    double x = left;
    for (Cell cell : cells) {
      double width = Math.max(share * cell.beats().toDouble(), setter.naturalWidth(cell));
      edges.add(x);
      placed.add(setter.place(cell, x, width));
      x += width;
    }
    edges.add(x);
    return new SetLine(cells, edges, placed);
  }

  /** What a beat gets when dense cells have taken what they need from the whole of the line. */
  private static double share(List<Cell> cells, double beatWidth, CellSetter setter) {
    double share = beatWidth;
    for (int pass = 0; pass <= cells.size(); pass++) {
      double dense = 0;
      double beats = 0;
      double all = 0;
      for (Cell cell : cells) {
        double length = cell.beats().toDouble();
        double natural = setter.naturalWidth(cell);
        all += length;
        if (natural > share * length) {
          dense += natural;
        } else {
          beats += length;
        }
      }
      share = beats == 0 ? 0 : Math.max(0, (all * beatWidth - dense) / beats);
    }
    return share;
  }

  double left() {
    return edges.get(0);
  }

  double right() {
    return edges.get(edges.size() - 1);
  }

  Ratio startBeat() {
    return cells.get(0).from();
  }

  Ratio endBeat() {
    return cells.get(cells.size() - 1).to();
  }

  boolean holds(Ratio beat) {
    return beat.compareTo(startBeat()) >= 0 && beat.compareTo(endBeat()) < 0;
  }

  /** Where the mark on a place begins; where its cell does if none begins there. */
  double xOf(Ratio beat) {
    for (int index = 0; index < cells.size(); index++) {
      if (cells.get(index).holds(beat)) {
        double edge = edges.get(index);
        return placed.get(index).stream()
            .filter(one -> one.mark().beat().compareTo(beat) >= 0)
            .mapToDouble(CellSetter.Placed::x)
            .findFirst()
            .orElse(edge);
      }
    }
    return beat.compareTo(startBeat()) < 0 ? left() : right();
  }

  /** Where the letters of the mark on a place begin, right of a stem or a sign of its speed. */
  double lettersOf(Ratio beat) {
    return placed.stream()
        .flatMap(List::stream)
        .filter(one -> one.mark().beat().equals(beat))
        .mapToDouble(one -> one.x() + one.prefix())
        .findFirst()
        .orElseGet(() -> xOf(beat));
  }

  /** Where a cell begins that begins on a place; else where the mark there does. */
  double edgeOf(Ratio beat) {
    for (int index = 0; index < cells.size(); index++) {
      if (cells.get(index).from().equals(beat)) {
        return edges.get(index);
      }
    }
    return xOf(beat);
  }

  /** Where the last mark that begins before a place has been drawn. */
  double endOf(Ratio beat) {
    double end = left();
    for (List<CellSetter.Placed> marks : placed) {
      for (CellSetter.Placed one : marks) {
        if (one.mark().beat().compareTo(beat) < 0) {
          end = one.x() + one.width();
        }
      }
    }
    return end;
  }
}
