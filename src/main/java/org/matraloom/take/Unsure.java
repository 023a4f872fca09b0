package org.matraloom.take;

/**
 * Two ways to pair a take that explain it nearly as well: one with something missing or left over
 * at an end, one with a matra left out or put in on the way.
 *
 * @param missing whether a sollu is missing; otherwise a sound is left over
 * @param atBeginning whether it may be at the beginning; otherwise at the end
 */
public record Unsure(boolean missing, boolean atBeginning) {

  /**
   * What cannot be told.
   *
   * @return a sentence
   */
  public String words() {
    String end = atBeginning ? "first" : "last";
    return missing
        ? "The " + end + " sollu, or a matra on the way, is missing: I cannot tell which."
        : "There is a sollu too many: a sound "
            + (atBeginning ? "before the first" : "after the last")
            + ", or a matra put in on the way: I cannot tell which.";
  }
}
