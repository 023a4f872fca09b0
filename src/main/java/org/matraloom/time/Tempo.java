package org.matraloom.time;

/**
 * How fast the beat goes: kalapramanam, fixed for a whole performance.
 *
 * @param beatsPerMinute beats a minute, exact, from {@value #SLOWEST} to {@value #FASTEST}
 */
public record Tempo(Ratio beatsPerMinute) {

  /** The slowest tempo taken, in beats a minute. */
  public static final int SLOWEST = 5;

  /** The fastest tempo taken, in beats a minute. */
  public static final int FASTEST = 600;

  /**
   * Checks the range.
   *
   * @throws IllegalArgumentException if the tempo is outside the range
   */
  public Tempo {
    if (!inRange(beatsPerMinute)) {
      throw new IllegalArgumentException(
          "tempo "
              + beatsPerMinute
              + " is outside "
              + SLOWEST
              + " to "
              + FASTEST
              + " beats a minute");
    }
  }

  /**
   * A tempo of whole beats a minute.
   *
   * @param beatsPerMinute beats a minute, {@value #SLOWEST} to {@value #FASTEST}
   * @return the tempo
   * @throws IllegalArgumentException if the tempo is outside the range
   */
  public static Tempo of(long beatsPerMinute) {
    return new Tempo(Ratio.of(beatsPerMinute));
  }

  /**
   * Whether a tempo may be set to this.
   *
   * @param beatsPerMinute beats a minute
   * @return true if it lies in the range
   */
  public static boolean inRange(Ratio beatsPerMinute) {
    return beatsPerMinute.compareTo(Ratio.of(SLOWEST)) >= 0
        && beatsPerMinute.compareTo(Ratio.of(FASTEST)) <= 0;
  }

  /**
   * The same beat, slower or faster.
   *
   * @param factor positive; 3/4 is three quarters of the tempo
   * @return the scaled tempo
   * @throws IllegalArgumentException if the result is outside the range
   */
  public Tempo scaled(Ratio factor) {
    return new Tempo(beatsPerMinute.times(factor));
  }

  /**
   * The length of one beat.
   *
   * @return seconds, exact
   */
  public Ratio secondsPerBeat() {
    return Ratio.of(60).dividedBy(beatsPerMinute);
  }
}
