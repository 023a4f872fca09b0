package org.matraloom.form;

/**
 * What ends with a sollu and begins with the next one, the strongest joint first.
 *
 * <p>A reciter breathes at joints, and at the stronger ones first (common practice).
 */
public enum Joint {
  /** A round ends. */
  ROUND("round"),
  /** A mora begins or has ended, or a part that holds lines of its own. */
  SECTION("section"),
  /** A statement of a mora has been said, and the next one follows. */
  STATEMENT("statement"),
  /** A phrase ends that the round's phrase names. */
  LINE("line"),
  /** A phrase named deeper down ends, or a kanakku group. */
  PHRASE("phrase"),
  /**
   * Inside a phrase as written, the voice rests: on a closing sollu (tom, dhim, tam ...) that rings
   * or is followed by silence, in a silence of two matras or more, or where two matras or more part
   * runs of three sollus or more.
   */
  PAUSE("pause"),
  /** Nothing: the phrase goes on. */
  INSIDE("inside");

  private final String word;

  Joint(String word) {
    this.word = word;
  }

  /**
   * Its name in tables.
   *
   * @return one word, such as "statement"
   */
  public String word() {
    return word;
  }

  /**
   * Whether a phrase as written ends here, or more.
   *
   * @return false for a pause and for what lies inside
   */
  public boolean endsPhrase() {
    return compareTo(PAUSE) < 0;
  }

  /** The stronger of two joints. */
  Joint or(Joint other) {
    return compareTo(other) <= 0 ? this : other;
  }
}
