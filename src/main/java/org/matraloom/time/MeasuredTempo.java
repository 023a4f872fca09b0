package org.matraloom.time;

/**
 * A tempo that was measured and not chosen.
 *
 * @param beatsPerMinute beats a minute, positive
 */
public record MeasuredTempo(double beatsPerMinute) {

  /**
   * The tempo of a beat.
   *
   * @param beatSeconds how long a beat lasts, in seconds, positive
   * @return the tempo
   */
  public static MeasuredTempo ofBeat(double beatSeconds) {
    return new MeasuredTempo(Tempo.SECONDS_PER_MINUTE / beatSeconds);
  }

  /**
   * How long a beat lasts.
   *
   * @return seconds
   */
  public double beatSeconds() {
    return Tempo.SECONDS_PER_MINUTE / beatsPerMinute;
  }

  /**
   * How long beats last.
   *
   * @param beats a length in beats
   * @return seconds
   */
  public double secondsOf(double beats) {
    return beats * Tempo.SECONDS_PER_MINUTE / beatsPerMinute;
  }
}
