package org.matraloom.sheet;

import org.matraloom.time.Ratio;

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
