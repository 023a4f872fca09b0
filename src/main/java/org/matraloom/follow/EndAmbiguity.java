package org.matraloom.follow;

/**
 * Two ways to pair a take that explain it nearly as well: one with something missing or left over
 * at an end, the other with a matra left out or put in on the way, or with the same at the other
 * end.
 *
 * @param missing whether a sollu is missing; otherwise a sound is left over
 * @param at at which end that may be
 */
public record EndAmbiguity(boolean missing, End at) {

  /** An end of the score. */
  public enum End {
    /** The first sollu, or a place on the way. */
    FIRST,
    /** The last sollu, or a place on the way. */
    LAST,
    /** The first sollu or the last. */
    EITHER,
    /** Several of the first sollus or of the last. */
    EITHER_SOME,
    /** The last sollu; something else was heard in its place. */
    UNLIKE
  }

  /**
   * What cannot be told.
   *
   * @return a sentence
   */
  public String words() {
    return (missing ? missingWords() : leftOverWords())
        + (at == End.UNLIKE ? ": I cannot tell whether it was said." : ": I cannot tell which.");
  }

  private String missingWords() {
    return switch (at) {
      case FIRST -> "The first sollu, or a matra on the way, is missing";
      case LAST -> "The last sollu, or a matra on the way, is missing";
      case EITHER -> "The first sollu or the last is missing";
      case EITHER_SOME -> "The first sollus or the last are missing";
      case UNLIKE -> "Where the last sollu should be, a sound is heard that is not like it";
    };
  }

  private String leftOverWords() {
    return "There is a sollu too many: a sound "
        + switch (at) {
          case FIRST -> "before the first, or a matra put in on the way";
          case LAST -> "after the last, or a matra put in on the way";
          case EITHER, EITHER_SOME, UNLIKE -> "before the first or after the last";
        };
  }
}
