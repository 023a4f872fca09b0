package org.matraloom.voice;

/**
 * Which moment of a sollu falls on the grid.
 *
 * <p>The felt beat of a syllable lies near its vowel onset, but studies differ: S. M. Marcus,
 * Percept. Psychophys. 30 (1981) 247-256, puts it at {@code 0.65 x + 0.25 y} after the acoustic
 * onset, x being the consonant and y the rest; I. Chow and others, J. Phonetics 49 (2015) 55-66,
 * find speakers who repeat one syllable put the consonant near the beat.
 */
public enum VoicePlacement {
  /** The vowel onset. */
  VOWEL,
  /** The moment the consonant is first heard: its burst, or the beginning of its murmur. */
  CONSONANT,
  /** The estimate of Marcus (1981), set so that a short ta lies as with {@link #VOWEL}. */
  MARCUS;

  private static final double MARCUS_X = 0.65;
  private static final double MARCUS_Y = 0.25;

  /** Marcus' estimate for a consonant of 15 ms and a rest of 100 ms, from the vowel onset. */
  private static final double MARCUS_OF_TA = 0.01975;

  /** The estimate was fitted to spoken digits; a long karvai must not drag it along. */
  private static final double MARCUS_LONGEST_Y = 0.25;

  /**
   * How long after the grid the vowel begins.
   *
   * @param syllable what is said
   * @param lengthSeconds how long it lasts, in all
   * @return seconds; negative if the vowel begins before the grid
   */
  double vowelDelay(PhoneSyllable syllable, double lengthSeconds) {
    double x = syllable.onset().stream().mapToDouble(VoicePlacement::heard).sum();
    return switch (this) {
      case VOWEL -> 0;
      case CONSONANT -> Math.min(x, 0.4 * lengthSeconds);
      case MARCUS -> {
        double shortened = Math.min(x, 0.4 * lengthSeconds);
        double y = Math.min(lengthSeconds - shortened, MARCUS_LONGEST_Y);
        yield shortened - MARCUS_X * shortened - MARCUS_Y * y + MARCUS_OF_TA;
      }
    };
  }

  /** The most the vowel may begin before the grid, in seconds. */
  double mostAheadSeconds() {
    return this == MARCUS ? MARCUS_Y * MARCUS_LONGEST_Y - MARCUS_OF_TA : 0;
  }

  private static double heard(PhoneConsonant consonant) {
    return consonant.isReleased() ? consonant.lagSeconds() : consonant.seconds();
  }
}
