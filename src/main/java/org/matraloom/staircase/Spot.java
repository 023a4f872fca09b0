package org.matraloom.staircase;

/**
 * A place that can be said over and over.
 *
 * @param kind what is looped
 * @param name the number of the join, or the name of the phrase
 */
public record Spot(Kind kind, String name) {

  /** What is looped. */
  public enum Kind {
    /** The beats around a change of nadai. */
    JOIN,
    /** A phrase. */
    PHRASE
  }

  /**
   * What it is called.
   *
   * @return words for the middle of a sentence
   */
  public String words() {
    return kind == Kind.JOIN ? "join " + name : "the phrase " + name;
  }
}
