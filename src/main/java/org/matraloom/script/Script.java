package org.matraloom.script;

import java.util.Locale;

/** The writing in which the sollus of a page stand. */
public enum Script {
  /** The user's own spelling, left as it is. */
  LATIN,
  /** Roman letters with the marks of ISO 15919, which tell dental from retroflex. */
  ISO15919,
  /** Tamil, which has one letter for k and g, one for t and d, one for ṭ and ḍ. */
  TAMIL,
  /** Kannada. */
  KANNADA,
  /** Telugu. */
  TELUGU,
  /** Malayalam. */
  MALAYALAM,
  /** Devanagari. */
  DEVANAGARI;

  /**
   * The name in lower case.
   *
   * @return for example "tamil"
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The language tag for a screen reader.
   *
   * @return a BCP 47 tag, "und-Latn" for romanised sollus
   */
  public String languageTag() {
    return switch (this) {
      case LATIN, ISO15919 -> "und-Latn";
      case TAMIL -> "ta";
      case KANNADA -> "kn";
      case TELUGU -> "te";
      case MALAYALAM -> "ml";
      case DEVANAGARI -> "hi";
    };
  }

  /**
   * What a reader must know who reads back from this script.
   *
   * @return a sentence, or empty where nothing is lost
   */
  public String loss() {
    return this == TAMIL
        ? "Tamil writes k and g, t and d, ṭ and ḍ with one letter each: what is roman cannot be read"
            + " back."
        : "";
  }
}
