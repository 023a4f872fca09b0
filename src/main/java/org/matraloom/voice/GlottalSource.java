package org.matraloom.voice;

/**
 * The voice at the folds: the slope of a flow pulse, once a period, with one closing exactly on the
 * vowel onset.
 *
 * <p>The flow is {@code x^2 - x^3} over the open part of the period (the KLGLOTT88 source of D. H.
 * Klatt and L. C. Klatt, J. Acoust. Soc. Am. 87 (1990) 820-857), damped by one pole. Each sample is
 * the mean slope over its own length, so that a closing between two samples folds little noise into
 * the audible band. The slope is -1 at the closing, before the damping.
 */
final class GlottalSource {

  private static final double TILT_AT_HZ = 3000;
  private static final double LEAST_TILT_DB = 0.05;
  private static final double CLOSED_BREATH = 0.4;

  /** How much periods differ: a healthy voice stays below about 1 % (common practice). */
  private static final double JITTER = 0.006;

  private static final double SHIMMER = 0.03;

  private final int ratePerSecond;
  private final Noise wobble;
  private final double firstOpenSeconds;

  private double closing;
  private double openSeconds;
  private double strength = 1;
  private double flow;
  private double damped;

  /**
   * Starts a source so that one closing falls on time 0.
   *
   * @param ratePerSecond frames a second
   * @param wobble where the small differences from period to period come from
   * @param fromSeconds where sound begins, 0 or before
   * @param pitchHz the pitch before time 0
   * @param openness how much of a period is open
   */
  GlottalSource(
      int ratePerSecond, Noise wobble, double fromSeconds, double pitchHz, double openness) {
    this.ratePerSecond = ratePerSecond;
    this.wobble = wobble;
    this.closing = -StrictMath.floor(-fromSeconds * pitchHz) / pitchHz;
    this.firstOpenSeconds = openness / pitchHz;
    this.openSeconds = firstOpenSeconds;
  }

  /**
   * Fills a block.
   *
   * @param block where the voice goes
   * @param opening where 1 goes while the folds are open, and a smaller number while they are shut
   * @param frames how many
   * @param fromSeconds the time of the first
   * @param pitchHz pitch
   * @param openness how much of a period is open
   * @param tiltDb damping at 3 kHz
   */
  void fill(
      double[] block,
      double[] opening,
      int frames,
      double fromSeconds,
      double pitchHz,
      double openness,
      double tiltDb) {
    double perFrame = 1.0 / ratePerSecond;
    double keep = damping(tiltDb);
    double smooth = damped;
    double before = flow;
    for (int i = 0; i < frames; i++) {
      double time = fromSeconds + (i + 1) * perFrame;
      double x = 1 - (closing - time) / openSeconds;
      double now = x <= 0 || x >= 1 ? 0 : x * x * (1 - x);
      double slope = (now - before) * ratePerSecond * openSeconds * strength;
      before = now;
      if (x >= 1) {
        startPeriod(pitchHz, openness, time > -0.5 * perFrame);
      }
      opening[i] = now > 0 ? 1 : CLOSED_BREATH;
      smooth = slope + (smooth - slope) * keep;
      block[i] = smooth;
    }
    flow = before;
    damped = smooth;
  }

  /** The next closing; periods before the vowel onset are even, so that one closes on it. */
  private void startPeriod(double pitchHz, double openness, boolean wobbles) {
    double period = (1 + (wobbles ? JITTER * wobble.next() : 0)) / pitchHz;
    strength = 1 + (wobbles ? SHIMMER * wobble.next() : 0);
    closing += period;
    openSeconds = wobbles ? openness * period : firstOpenSeconds;
  }

  /** The one-pole low-pass that is so many decibels down at 3 kHz. */
  private double damping(double tiltDb) {
    double power = StrictMath.pow(10, Math.max(LEAST_TILT_DB, tiltDb) / 10);
    double corner = TILT_AT_HZ / StrictMath.sqrt(power - 1);
    return StrictMath.exp(-2 * Math.PI * corner / ratePerSecond);
  }
}
