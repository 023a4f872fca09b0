package org.matraloom.loudness;

/**
 * The K-weighting of ITU-R BS.1770-4 for one channel: a shelf for the head, then a high-pass.
 *
 * <p>The recommendation prints coefficients for 48 kHz only. They are the bilinear transform of an
 * analogue pair whose corner, gain and quality are the ones of libebur128 (J. Kokemüller,
 * ebur128.c); from these the filter follows for any rate, and at 48 kHz it gives the printed
 * coefficients back.
 */
final class KWeighting {

  private static final double SHELF_HZ = 1681.974450955533;
  private static final double SHELF_GAIN_DB = 3.999843853973347;
  private static final double SHELF_Q = 0.7071752369554196;
  private static final double SHELF_BAND_EXPONENT = 0.4996667741545416;
  private static final double HIGH_PASS_HZ = 38.13547087602444;
  private static final double HIGH_PASS_Q = 0.5003270373238773;
  private static final double INAUDIBLE = 1e-30;

  /**
   * One second-order section; the leading coefficient of the denominator is 1.
   *
   * @param b0 numerator, now
   * @param b1 numerator, one sample back
   * @param b2 numerator, two samples back
   * @param a1 denominator, one sample back
   * @param a2 denominator, two samples back
   */
  record Section(double b0, double b1, double b2, double a1, double a2) {}

  private final Section shelf;
  private final Section highPass;
  private double shelf1;
  private double shelf2;
  private double high1;
  private double high2;

  KWeighting(int ratePerSecond) {
    shelf = shelf(ratePerSecond);
    highPass = highPass(ratePerSecond);
  }

  static Section shelf(int ratePerSecond) {
    double k = StrictMath.tan(StrictMath.PI * SHELF_HZ / ratePerSecond);
    double high = StrictMath.pow(10, SHELF_GAIN_DB / 20);
    double band = StrictMath.pow(high, SHELF_BAND_EXPONENT);
    double a0 = 1 + k / SHELF_Q + k * k;
    return new Section(
        (high + band * k / SHELF_Q + k * k) / a0,
        2 * (k * k - high) / a0,
        (high - band * k / SHELF_Q + k * k) / a0,
        2 * (k * k - 1) / a0,
        (1 - k / SHELF_Q + k * k) / a0);
  }

  static Section highPass(int ratePerSecond) {
    double k = StrictMath.tan(StrictMath.PI * HIGH_PASS_HZ / ratePerSecond);
    double a0 = 1 + k / HIGH_PASS_Q + k * k;
    return new Section(1, -2, 1, 2 * (k * k - 1) / a0, (1 - k / HIGH_PASS_Q + k * k) / a0);
  }

  /** Filters one sample; real-time safe: no allocation, no lock. */
  double filter(double sample) {
    double shelved = shelf.b0 * sample + shelf1;
    shelf1 = shelf.b1 * sample - shelf.a1 * shelved + shelf2;
    shelf2 = shelf.b2 * sample - shelf.a2 * shelved;
    double weighted = highPass.b0 * shelved + high1;
    high1 = highPass.b1 * shelved - highPass.a1 * weighted + high2;
    high2 = highPass.b2 * shelved - highPass.a2 * weighted;
    return weighted;
  }

  /** Ends a tail that nobody hears, which would otherwise fade into slow denormal numbers. */
  void rest() {
    if (Math.abs(high1) + Math.abs(high2) + Math.abs(shelf1) + Math.abs(shelf2) < INAUDIBLE) {
      high1 = 0;
      high2 = 0;
      shelf1 = 0;
      shelf2 = 0;
    }
  }
}
