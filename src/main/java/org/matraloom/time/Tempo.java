package org.matraloom.time;

import java.math.BigInteger;

/**
 * How fast the beat goes: kalapramanam, fixed for a whole performance.
 *
 * @param beatsPerMinute beats a minute, exact, from {@value #SLOWEST} to {@value #FASTEST}
 */
public record Tempo(Ratio beatsPerMinute) {

  static final int SECONDS_PER_MINUTE = 60;

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
   * The fastest tempo of whole beats a minute at which matras go by no quicker than a rate.
   *
   * @param matrasPerSecond the rate, positive
   * @param matrasPerBeat matras a beat
   * @return the tempo
   * @throws IllegalArgumentException if it is outside the range of tempi
   */
  public static Tempo noQuickerThan(double matrasPerSecond, int matrasPerBeat) {
    return of((long) (SECONDS_PER_MINUTE * matrasPerSecond / matrasPerBeat));
  }

  /**
   * How long beats last.
   *
   * @param beats a length in beats
   * @return seconds, exact
   */
  public Ratio secondsOf(Ratio beats) {
    return beats.times(Ratio.of(SECONDS_PER_MINUTE).dividedBy(beatsPerMinute));
  }

  /**
   * How many beats fill a time.
   *
   * @param seconds a length in seconds
   * @return beats, exact
   */
  public Ratio beatsIn(Ratio seconds) {
    return seconds.dividedBy(secondsOf(Ratio.ONE));
  }

  /**
   * How many beats fill so many thousandths of a second.
   *
   * @param milliseconds a length in ms
   * @return beats, exact
   */
  public Ratio beatsInMs(long milliseconds) {
    return beatsIn(Ratio.of(milliseconds, 1_000));
  }

  /**
   * How long beats last, in whole units, rounded half up.
   *
   * @param beats a length in beats
   * @param unitsPerSecond units of a second: 1,000 for ms, or the frames of a sample rate
   * @return units
   * @throws ArithmeticException if the result does not fit a {@code long}
   */
  public long unitsOf(Ratio beats, long unitsPerSecond) {
    Ratio perBeat = secondsOf(Ratio.ONE);
    BigInteger num =
        BigInteger.valueOf(beats.num())
            .multiply(BigInteger.valueOf(perBeat.num()))
            .multiply(BigInteger.valueOf(unitsPerSecond));
    BigInteger den = BigInteger.valueOf(beats.den()).multiply(BigInteger.valueOf(perBeat.den()));
    BigInteger twiceDen = den.multiply(BigInteger.TWO);
    return floorDiv(num.multiply(BigInteger.TWO).add(den), twiceDen).longValueExact();
  }

  private static BigInteger floorDiv(BigInteger num, BigInteger den) {
    BigInteger[] parts = num.divideAndRemainder(den);
    return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
  }
}
