package org.matraloom.voice;

/**
 * The moments of one sollu, its vowel onset being 0.
 *
 * @param leadSeconds how long before the vowel onset its consonant begins
 * @param endSeconds when it is over: where the next consonant begins or its own time ends
 * @param pace 1 where the consonants have their full length, smaller where they are shortened
 * @param light whether it is so short that nothing closes fully
 * @param rings whether a karvai follows
 */
public record VoiceTiming(
    double leadSeconds, double endSeconds, double pace, boolean light, boolean rings) {

  /**
   * Below this length of a sollu the articulation becomes lighter: under about 60 ms isolated
   * vowels are no longer told apart surely (common practice puts the floor of a syllable there
   * too).
   */
  static final double LIGHT_BELOW_SECONDS = 0.060;

  private static final double LARGEST_SHARE = 0.40;
  private static final double LIGHT_SHARE = 0.32;
  private static final double NASAL_SHARE = 0.42;
  private static final double LONGEST_VOWEL_BEFORE_NASAL = 0.16;
  private static final double LONGEST_VOWEL_BEFORE_SWELL = 0.22;
  private static final double CLOSING_SHARE = 0.40;
  private static final double CLOSING_SECONDS = 0.060;

  /**
   * How long before its vowel onset a sollu begins: its consonants at their full length, or as much
   * as leaves the vowel before it the larger part of the time.
   *
   * @param naturalSeconds how long its consonants are where nothing hurries them
   * @param soundingSeconds how much of the time since the vowel onset before is taken by that sollu
   * @param quietSeconds how much of it is silent
   */
  static double lead(double naturalSeconds, double soundingSeconds, double quietSeconds) {
    double share = isLight(soundingSeconds) ? LIGHT_SHARE : LARGEST_SHARE;
    return Math.min(naturalSeconds, quietSeconds + share * soundingSeconds);
  }

  /** Whether a sollu of this length is said lightly. */
  static boolean isLight(double seconds) {
    return seconds < LIGHT_BELOW_SECONDS - 0.0005;
  }

  /** How long before the vowel onset a consonant is released, given how long it is in all. */
  double lag(PhoneConsonant consonant, double seconds) {
    return Math.min(0.6 * seconds, consonant.lagSeconds() * StrictMath.sqrt(pace));
  }

  /**
   * When the vowel gives way to what closes the syllable.
   *
   * @param syllable what is said
   * @return seconds after the vowel onset
   */
  public double vowelSeconds(PhoneSyllable syllable) {
    if (syllable.coda().isEmpty()) {
      return endSeconds;
    }
    if (syllable.closesIntoNasal()) {
      double most = rings ? LONGEST_VOWEL_BEFORE_SWELL : LONGEST_VOWEL_BEFORE_NASAL;
      return Math.min(most, (1 - NASAL_SHARE) * endSeconds);
    }
    double closed = CLOSING_SECONDS * syllable.coda().size();
    return endSeconds - Math.min(CLOSING_SHARE * endSeconds, closed);
  }
}
