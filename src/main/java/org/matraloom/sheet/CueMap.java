package org.matraloom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;

/**
 * Which sollu falls on each kriya.
 *
 * <p>A sollu that only rings on, or that began before the beat, stands in brackets; silence is a
 * dot; a beat on which the piece has not begun or is over stays empty.
 */
final class CueMap {

  /** What stands for silence on a beat. */
  static final String SILENCE = ".";

  private CueMap() {}

  /** The rows of a sheet with one sign a beat. */
  static List<Row> rows(Sheet sheet) {
    List<Row> rows = new ArrayList<>();
    String sounding = "";
    Optional<Mark> reaching = Optional.empty();
    for (Row row : sheet.rows()) {
      List<Cell> cells = new ArrayList<>();
      for (Cell cell : row.cells()) {
        Optional<String> cue = Optional.empty();
        if (reaching.isPresent() && reaching.get().endBeat().compareTo(cell.from()) > 0) {
          cue = Optional.of(later(reaching.get(), sounding));
        }
        for (Mark mark : cell.marks()) {
          if (mark instanceof Mark.Said said) {
            sounding = said.text();
          } else if (mark instanceof Mark.Silent) {
            sounding = "";
          }
          if (mark.beat().equals(cell.from())) {
            cue = Optional.of(mark instanceof Mark.Said ? sounding : later(mark, sounding));
          }
          reaching = Optional.of(mark);
        }
        cells.add(only(cell, cue));
      }
      rows.add(
          new Row(
              row.number(),
              row.label(),
              cells,
              row.parts(),
              row.turns().stream().filter(turn -> turn.beat().isWhole()).toList(),
              List.of(),
              Optional.empty(),
              List.of()));
    }
    return List.copyOf(rows);
  }

  private static String later(Mark mark, String sounding) {
    boolean silent = mark instanceof Mark.Silent || sounding.isEmpty();
    return silent ? SILENCE : "(" + sounding + ")";
  }

  private static Cell only(Cell cell, Optional<String> cue) {
    List<Mark> marks =
        cell.kriya().isEmpty() || cue.isEmpty()
            ? List.of()
            : List.of(
                new Mark.Said(
                    cell.from(),
                    Ratio.ONE,
                    1,
                    1,
                    new Sollu(cue.get(), ""),
                    cue.get(),
                    false,
                    Optional.empty()));
    return new Cell(
        cell.beat(),
        cell.from(),
        cell.to(),
        cell.kriya(),
        cell.samam(),
        cell.again(),
        cell.end(),
        marks);
  }
}
