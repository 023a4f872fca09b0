package org.matraloom.measure;

/** What tells a reciter when the last sollu is due, the surest first. */
public enum LandingBeat {
  /** The guide that a recorded take was said to. */
  GUIDE("the guide"),

  /** Claps or clicks that are heard in the recording. */
  CLAPS("the claps in the recording"),

  /** The pulse that the take has before its nadai changes, carried on. */
  PULSE_BEFORE_CHANGE("the pulse before the change"),

  /** The pulse of the whole take. */
  PULSE("the pulse of the take");

  private final String words;

  LandingBeat(String words) {
    this.words = words;
  }

  /**
   * What it is called in the middle of a sentence.
   *
   * @return such as "the guide"
   */
  public String words() {
    return words;
  }
}
