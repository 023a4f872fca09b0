package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.matraloom.score.Avartana;

/**
 * The lines that a row takes on a page. Beats are equally wide, unless that tears angas and room by
 * need does not, or some beats are much denser than the others, or the whole row then fits one line
 * that else were two of unlike length.
 *
 * @param style the style they are set in; a dense row has smaller letters
 * @param lines the cells of each line
 */
record RowLines(PageStyle style, List<List<Cell>> lines) {

  private static final double DENSE = 1.5;

  RowLines {
    lines = lines.stream().map(List::copyOf).toList();
  }

  /** The lines of a row, with smaller letters only where two beats of it do not fit a line. */
  static RowLines of(Row row, Avartana avartana, PageStyle usual, SetterOf setters) {
    RowLines best = null;
    for (PageStyle style : usual.denser()) {
      RowLines tried = new RowLines(style, lines(row, avartana, style, setters.of(style)));
      if (best == null || tried.lines.size() < best.lines.size()) {
        best = tried;
      }
      if (best.lines.size() * 2 <= row.cells().size()) {
        break;
      }
    }
    return best;
  }

  /** Gives the setter of a style. */
  @FunctionalInterface
  interface SetterOf {
    CellSetter of(PageStyle style);
  }

  /** Beats of the longest line. */
  int longest() {
    return lines.stream().mapToInt(List::size).max().orElse(1);
  }

  private static List<List<Cell>> lines(
      Row row, Avartana avartana, PageStyle style, CellSetter setter) {
    double room = style.gridWidth();
    double[] own = row.cells().stream().mapToDouble(setter::naturalWidth).toArray();
    double[] equal = new double[own.length];
    Arrays.fill(equal, Arrays.stream(own).max().orElse(1));
    List<List<Cell>> alike = whole(row, avartana, equal, room);
    List<List<Cell>> dense = whole(row, avartana, own, room);
    boolean worth = dense.size() * 2 <= alike.size() && tears(alike, avartana);
    boolean uneven = dense.size() < alike.size() && hasDenseBeats(row);
    boolean whole = dense.size() == 1 && !areHalves(alike);
    List<List<Cell>> lines = new ArrayList<>();
    for (List<Cell> line : worth || uneven || whole ? dense : alike) {
      if (line.size() > 1) {
        lines.add(line);
      } else {
        setter.cut(line.get(0), room).forEach(part -> lines.add(List.of(part)));
      }
    }
    return lines;
  }

  /** Whether lines hold equally many beats, as the halves of adi do. */
  private static boolean areHalves(List<List<Cell>> lines) {
    return lines.stream().mapToInt(List::size).distinct().count() == 1;
  }

  /** Whether a line begins inside an anga. */
  private static boolean tears(List<List<Cell>> lines, Avartana avartana) {
    return lines.stream()
        .mapToLong(line -> Math.floorMod(line.get(0).beat(), (long) avartana.beats()))
        .anyMatch(place -> !avartana.angaStarts().contains((int) place));
  }

  /** Whether some beats hold many more marks than most. */
  private static boolean hasDenseBeats(Row row) {
    int[] marks = row.cells().stream().mapToInt(cell -> cell.marks().size()).sorted().toArray();
    return marks[marks.length - 1] > DENSE * marks[marks.length / 2];
  }

  private static List<List<Cell>> whole(Row row, Avartana avartana, double[] widths, double room) {
    double[] reached = new double[widths.length + 1];
    for (int index = 0; index < widths.length; index++) {
      reached[index + 1] = reached[index] + widths[index];
    }
    if (row.cells().size() == avartana.beats() && row.cells().get(0).beginsCycle()) {
      LineBreaks.Room holds = (from, to) -> reached[to] - reached[from] <= room;
      return LineBreaks.of(avartana, holds).lines(row, avartana);
    }
    List<List<Cell>> lines = new ArrayList<>();
    int from = 0;
    for (int to = 1; to <= row.cells().size(); to++) {
      if (to == row.cells().size() || reached[to + 1] - reached[from] > room) {
        lines.add(row.cells().subList(from, to));
        from = to;
      }
    }
    return lines;
  }
}
