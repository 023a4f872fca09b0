package org.matraloom.sheet;

import java.util.List;
import java.util.Optional;
import org.matraloom.score.Kriya;
import org.matraloom.time.Ratio;

/**
 * One beat of a row, or the part of it that falls into the row.
 *
 * @param beat the whole beat it belongs to; 0 is a samam
 * @param from where it begins, in beats
 * @param to where it ends, in beats
 * @param kriya the gesture on the beat; nothing where the cell begins after the beat
 * @param samam whether the beat is the first of an avartana
 * @param again whether the kriya is given a second time
 * @param end what ends with the cell
 * @param marks what begins in it, in order
 */
public record Cell(
    long beat,
    Ratio from,
    Ratio to,
    Optional<Kriya> kriya,
    boolean samam,
    boolean again,
    End end,
    List<Mark> marks) {

  /** What ends with a cell. */
  enum End {
    /** A beat. */
    BEAT,
    /** An anga. */
    ANGA,
    /** An avartana. */
    AVARTANA
  }

  public Cell {
    marks = List.copyOf(marks);
  }

  boolean holds(Ratio place) {
    return place.compareTo(from) >= 0 && place.compareTo(to) < 0;
  }

  /** Whether what ends at a place ends in this cell and not in the one before. */
  boolean endsWith(Ratio place) {
    return place.compareTo(from) > 0 && place.compareTo(to) <= 0;
  }

  /** Whether an avartana begins with it. */
  boolean beginsCycle() {
    return samam && kriya.isPresent();
  }

  /** The same beat with nothing in it. */
  Cell withoutMarks() {
    return new Cell(beat, from, to, kriya, samam, again, end, List.of());
  }

  /** The part up to a mark, as a cell after which the beat goes on. */
  Cell before(int mark) {
    Ratio cut = marks.get(mark).beat();
    return new Cell(beat, from, cut, kriya, samam, again, End.BEAT, marks.subList(0, mark));
  }

  /** The part from a mark on, without the kriya. */
  Cell after(int mark) {
    Ratio cut = marks.get(mark).beat();
    return new Cell(
        beat, cut, to, Optional.empty(), samam, again, end, marks.subList(mark, marks.size()));
  }

  Ratio beats() {
    return to.minus(from);
  }
}
