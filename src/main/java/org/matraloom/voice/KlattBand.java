package org.matraloom.voice;

/**
 * A band of noise: two equal resonators after two differences, so that the band falls off by 12 dB
 * an octave on both sides.
 *
 * <p>One resonator alone, as in the parallel branch of Klatt 1980, lets through too much below its
 * peak for a burst that is to be compact.
 */
final class KlattBand {

  private final double input;
  private final double b;
  private final double c;
  private double x1;
  private double x2;
  private double y1;
  private double y2;
  private double z1;
  private double z2;

  /**
   * Tunes a band.
   *
   * @param ratePerSecond frames a second
   * @param hz its peak
   * @param bandwidthHz width of each resonator at half power
   * @param gain gain at the peak
   */
  KlattBand(int ratePerSecond, double hz, double bandwidthHz, double gain) {
    double radius = StrictMath.exp(-Math.PI * bandwidthHz / ratePerSecond);
    double angle = 2 * Math.PI * hz / ratePerSecond;
    c = -radius * radius;
    b = 2 * radius * StrictMath.cos(angle);
    double flat =
        (1 - radius)
            * StrictMath.sqrt(1 - 2 * radius * StrictMath.cos(2 * angle) + radius * radius);
    double difference = 2 * StrictMath.sin(angle / 2);
    input = gain * flat * flat / (difference * difference);
  }

  /**
   * Adds its part of a noise to what is heard.
   *
   * @param noise samples, left alone
   * @param frames how many of them
   * @param sum where the band is added
   */
  void add(double[] noise, int frames, double[] sum) {
    for (int i = 0; i < frames; i++) {
      double x = noise[i];
      double y = input * (x - 2 * x1 + x2) + b * y1 + c * y2;
      double z = y + b * z1 + c * z2;
      x2 = x1;
      x1 = x;
      y2 = y1;
      y1 = y;
      z2 = z1;
      z1 = z;
      sum[i] += z;
    }
  }
}
