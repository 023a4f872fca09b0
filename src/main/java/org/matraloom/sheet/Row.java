package org.matraloom.sheet;

import java.util.List;
import java.util.Optional;
import org.matraloom.breath.Breath;
import org.matraloom.time.Ratio;

/**
 * A row of the written page: an avartana, or a line of a phrase.
 *
 * @param number which avartana it begins in, from 1
 * @param label the phrase whose line it is; empty for an avartana
 * @param cells its beats in order, at least one
 * @param parts the rounds that fall into it, in order
 * @param turns the changes of nadai in it
 * @param breaths the breaths that begin in it
 * @param landing where the last matra ends, if that is in the row or at its end
 * @param tags what stands above it, in order of time; those that began before it included
 */
public record Row(
    int number,
    String label,
    List<Cell> cells,
    List<RoundPart> parts,
    List<NadaiTurn> turns,
    List<Breath> breaths,
    Optional<Ratio> landing,
    List<Tag> tags) {

  /** The label of the rows of the first reciter in the drawn forms. */
  static final String FIRST = "reciter 1";

  /** The label of the rows of the second reciter. */
  static final String SECOND = "reciter 2";

  /** The label of the rows of the voice where those of a drum stand below. */
  static final String VOICE = "voice";

  /** The label of the rows of a drum. */
  static final String DRUM = "drum";

  public Row {
    cells = List.copyOf(cells);
    parts = List.copyOf(parts);
    turns = List.copyOf(turns);
    breaths = List.copyOf(breaths);
    tags = List.copyOf(tags);
  }

  /**
   * What stands above a row: the name of a phrase, the figure of a group, a statement of a mora.
   *
   * @param kind which of them
   * @param from where it begins, in beats of the performance
   * @param to where it ends, in beats of the performance
   * @param text what is written; empty for a statement, which has a bracket
   */
  public record Tag(Kind kind, Ratio from, Ratio to, String text) {

    /** What a tag names. */
    public enum Kind {
      /** A phrase that the phrase of a round names, with its matras. */
      NAME,
      /** A group, with its number. */
      FIGURE,
      /** One statement of a mora. */
      STATEMENT
    }

    /** Whether some of it lies between two places. */
    boolean reaches(Ratio start, Ratio end) {
      return from.compareTo(end) < 0 && to.compareTo(start) > 0;
    }

    /** Whether it begins between two places, the second not included. */
    boolean beginsIn(Ratio start, Ratio end) {
      return from.compareTo(start) >= 0 && from.compareTo(end) < 0;
    }
  }

  /**
   * A place from which a beat holds another number of matras.
   *
   * @param beat where, in beats of the performance
   * @param matrasPerBeat matras a beat from here on, kalam included
   */
  public record NadaiTurn(Ratio beat, int matrasPerBeat) {}

  /**
   * The breaths that begin between two places, the second not included.
   *
   * @param from in beats of the performance
   * @param to the same; later
   * @return in order of time
   */
  public List<Breath> breathsIn(Ratio from, Ratio to) {
    return breaths.stream()
        .filter(breath -> breath.startBeat().compareTo(from) >= 0)
        .filter(breath -> breath.startBeat().compareTo(to) < 0)
        .toList();
  }

  /** Whether it stands below a row of the voice or of the first reciter. */
  boolean isBelow() {
    return label.equals(SECOND) || label.equals(DRUM);
  }

  /** Whether one breathes in a cell. */
  boolean breathesIn(Cell cell) {
    return !breathsIn(cell.from(), cell.to()).isEmpty();
  }

  /**
   * Where it begins.
   *
   * @return beats of the performance
   */
  public Ratio startBeat() {
    return cells.get(0).from();
  }

  /**
   * Where it ends.
   *
   * @return beats of the performance
   */
  public Ratio endBeat() {
    return cells.get(cells.size() - 1).to();
  }
}
