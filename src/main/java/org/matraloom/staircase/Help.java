package org.matraloom.staircase;

/** What is still played with a pass, the most help first. */
public enum Help {
  /** Voice, ticks, counts and claps. */
  ALL("with voice, ticks, counts and claps"),
  /** The voice is silent. */
  NO_VOICE("without the voice"),
  /** Voice and ticks are silent. */
  NO_TICKS("without voice and ticks"),
  /** Claps and waves of the hand alone. */
  CLAPS("with claps only"),
  /** The claps fall silent for some avartanas as well: no help. */
  CLAPS_AWAY("with claps that fall silent for an avartana after two");

  private final String words;

  Help(String words) {
    this.words = words;
  }

  /**
   * What is heard.
   *
   * @return words for the middle of a sentence
   */
  public String words() {
    return words;
  }

  /**
   * Whether nothing can be taken away any more.
   *
   * @return whether this is the last
   */
  public boolean isLeast() {
    return this == CLAPS_AWAY;
  }

  Help less() {
    return values()[Math.min(ordinal() + 1, values().length - 1)];
  }

  Help more() {
    return values()[Math.max(ordinal() - 1, 0)];
  }
}
