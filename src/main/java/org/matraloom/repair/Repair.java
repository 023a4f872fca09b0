package org.matraloom.repair;

import java.util.List;
import org.matraloom.score.Edit;
import org.matraloom.score.Performance;

/**
 * One way to make a written piece land.
 *
 * @param kind what is changed
 * @param edits the changes, in order
 * @param words what to do, in a musician's words
 * @param cost how much it changes; lower is offered first
 * @param performance the changed piece laid out; it lands
 */
public record Repair(Kind kind, List<Edit> edits, String words, int cost, Performance performance) {

  /** What a repair changes. */
  public enum Kind {
    /** Where the first round begins. */
    START,
    /** A wait before one of the rounds. */
    WAIT,
    /** A wait that is written already gets another length. */
    OTHER_WAIT,
    /** An equal karvai between all rounds. */
    BETWEEN,
    /** The karvais inside a threefold ending. */
    ENDING,
    /** Matras are added to a phrase. */
    ADD,
    /** Matras are taken out of a phrase. */
    DROP,
    /** Matras are added and the start moves. */
    ADD_AND_START,
    /** Matras are taken out and the start moves. */
    DROP_AND_START,
    /** The last round has another nadai or kalam. */
    LAST_ROUND,
    /** The last round is said alone. */
    LAST_ALONE,
    /** Another tala, in which it lands as it is. */
    TALA
  }

  /** Copies the list. */
  public Repair {
    edits = List.copyOf(edits);
  }
}
