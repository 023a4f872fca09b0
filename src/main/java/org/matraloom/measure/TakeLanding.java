package org.matraloom.measure;

/**
 * How the take lands.
 *
 * @param place the last sollu, its place among {@code Alignment.expected()}
 * @param errorSeconds how much later it is than it was due; negative if earlier
 * @param errorMatras the same in matras
 * @param doubtSeconds by how much that may be wrong: a standard error, at least 0
 * @param mostSeconds how far off it may be and land: {@link Tolerance#landingSeconds}
 * @param against what told the reciter when it was due
 */
public record TakeLanding(
    int place,
    double errorSeconds,
    double errorMatras,
    double doubtSeconds,
    double mostSeconds,
    LandingBeat against) {

  /** Of a hundred errors of a measure 98 are less than so many standard errors to one side. */
  private static final double SURE = 2;

  /**
   * Whether the last sollu is surely near enough.
   *
   * @return false if it is off, and also if that cannot be told
   */
  public boolean lands() {
    return Math.abs(errorSeconds) + SURE * doubtSeconds <= mostSeconds;
  }

  /**
   * Whether the last sollu is off as it was measured, and to which side.
   *
   * @return false if it lands, and also if it may be a little off or the side is not known
   */
  public boolean isOff() {
    return Math.abs(errorSeconds) > mostSeconds && isSided();
  }

  /**
   * Whether it is surely known to which side the last sollu is off, if it is.
   *
   * @return false if it may as well be early as late
   */
  public boolean isSided() {
    return Math.abs(errorSeconds) >= giveOrTakeSeconds();
  }

  /**
   * How far the error may be from what was measured.
   *
   * @return seconds, to either side
   */
  public double giveOrTakeSeconds() {
    return SURE * doubtSeconds;
  }
}
