package org.matraloom.madetake;

/**
 * The beat of a made take: its period grows or shrinks evenly with the beats.
 *
 * @param firstBeat where the take begins
 * @param beats how long it is
 * @param startSeconds when it begins
 * @param periodSeconds the first period
 * @param growth the last period against the first, less 1
 */
public record TakePulse(
    double firstBeat, double beats, double startSeconds, double periodSeconds, double growth) {

  static TakePulse of(double firstBeat, double beats, double scoreSecondsPerBeat, Flaws flaws) {
    double growth = 1 / (1 + flaws.driftPercent / 100) - 1;
    double mean = scoreSecondsPerBeat / flaws.tempoFactor;
    return new TakePulse(firstBeat, beats, flaws.startSeconds, mean / (1 + growth / 2), growth);
  }

  double secondsAt(double beat) {
    double part = (beat - firstBeat) / beats;
    return startSeconds + periodSeconds * beats * part * (1 + growth * part / 2);
  }

  /** The tempo in the middle. */
  public double beatsPerMinute() {
    return 60 / (periodSeconds * (1 + growth / 2));
  }

  /** Tempo of the last beat against the first. */
  public double driftPercent() {
    return 100 * (1 / (1 + growth) - 1);
  }

  /** The same by another clock, with the recording begun at another time. */
  TakePulse on(double clockFactor, double laterSeconds) {
    return new TakePulse(
        firstBeat,
        beats,
        startSeconds * clockFactor + laterSeconds,
        periodSeconds * clockFactor,
        growth);
  }
}
