package org.matraloom.voice;

/**
 * A two-pole digital resonator, or its inverse, run over a block in place.
 *
 * <p>The difference equation is that of D. H. Klatt, Software for a cascade/parallel formant
 * synthesizer, J. Acoust. Soc. Am. 67 (1980), p. 974: {@code y[n] = A x[n] + B y[n-1] + C y[n-2]}
 * with unit gain at 0 Hz; the inverse takes {@code A' = 1/A, B' = -B/A, C' = -C/A} on the input.
 */
final class KlattResonator {

  private final double secondsPerFrame;
  private double hz = -1;
  private double bandwidthHz = -1;
  private double a = 1;
  private double b;
  private double c;
  private double before;
  private double beforeThat;

  /**
   * Makes a resonator that passes its input unchanged until it is tuned.
   *
   * @param ratePerSecond frames a second
   */
  KlattResonator(int ratePerSecond) {
    this.secondsPerFrame = 1.0 / ratePerSecond;
  }

  /**
   * Tunes it; what is ringing goes on at the new frequency.
   *
   * @param hz resonance, below half the frame rate
   * @param bandwidthHz width at half power, above 0
   */
  void tune(double hz, double bandwidthHz) {
    if (hz == this.hz && bandwidthHz == this.bandwidthHz) {
      return;
    }
    this.hz = hz;
    this.bandwidthHz = bandwidthHz;
    double radius = StrictMath.exp(-Math.PI * bandwidthHz * secondsPerFrame);
    c = -radius * radius;
    b = 2 * radius * StrictMath.cos(2 * Math.PI * hz * secondsPerFrame);
    a = 1 - b - c;
  }

  /**
   * Resonates.
   *
   * @param block samples, replaced by the result
   * @param frames how many of them
   */
  void resonate(double[] block, int frames) {
    double gain = a;
    double first = b;
    double second = c;
    double y1 = before;
    double y2 = beforeThat;
    for (int i = 0; i < frames; i++) {
      double y = gain * block[i] + first * y1 + second * y2;
      y2 = y1;
      y1 = y;
      block[i] = y;
    }
    before = y1;
    beforeThat = y2;
  }

  /**
   * Takes a resonance away: the inverse of {@link #resonate} with the same tuning.
   *
   * @param block samples, replaced by the result
   * @param frames how many of them
   */
  void cancel(double[] block, int frames) {
    double gain = 1 / a;
    double first = -b / a;
    double second = -c / a;
    double x1 = before;
    double x2 = beforeThat;
    for (int i = 0; i < frames; i++) {
      double x = block[i];
      block[i] = gain * x + first * x1 + second * x2;
      x2 = x1;
      x1 = x;
    }
    before = x1;
    beforeThat = x2;
  }
}
