package org.matraloom.sound;

import org.matraloom.voice.Noise;

/**
 * One burst of shaped noise inside a stroke.
 *
 * @param startMs where it begins after the start of the stroke
 * @param gain its loudness beside the other layers
 * @param attackMs how long it rises from a quarter of its strength; 0 begins at full strength
 * @param decayMs how long it takes to fall to 1/e
 * @param centreHz the middle of its band
 * @param q the sharpness of its band; below 1 is broad and has no pitch
 */
record NoiseLayer(
    double startMs, double gain, double attackMs, double decayMs, double centreHz, double q) {

  private static final double FIRST = 0.25;

  /** Noise is drawn at this rate, whatever the rate of the samples. */
  private static final int POINTS_PER_MS = 24;

  /** Adds the burst to a stroke; the wave is the same at every rate. */
  void addTo(double[] stroke, int ratePerSecond, Noise noise) {
    double framesPerMs = ratePerSecond / 1000.0;
    double[] points = points(stroke.length / framesPerMs, noise);
    int startFrame = (int) Math.round(startMs * framesPerMs);
    BandPass first = new BandPass(centreHz, q, ratePerSecond);
    BandPass second = new BandPass(centreHz, q, ratePerSecond);
    for (int i = 0; startFrame + i < stroke.length; i++) {
      double ms = i / framesPerMs;
      double excitation = strength(ms) * between(points, ms * POINTS_PER_MS);
      stroke[startFrame + i] += gain * second.next(first.next(excitation));
    }
  }

  private double strength(double ms) {
    return ms < attackMs
        ? FIRST + (1 - FIRST) * ms / attackMs
        : StrictMath.exp((attackMs - ms) / decayMs);
  }

  private static double[] points(double lengthMs, Noise noise) {
    double[] points = new double[(int) Math.ceil(lengthMs * POINTS_PER_MS) + 2];
    points[0] = 1;
    for (int i = 1; i < points.length; i++) {
      points[i] = noise.next();
    }
    return points;
  }

  private static double between(double[] points, double position) {
    int before = (int) position;
    double rest = position - before;
    return points[before] * (1 - rest) + points[before + 1] * rest;
  }

  /**
   * A second-order band pass with unit gain at its centre.
   *
   * <p>Bristow-Johnson, "Cookbook formulae for audio EQ biquad filter coefficients", W3C Audio
   * Working Group note, 2021, BPF with constant 0 dB peak gain.
   */
  private static final class BandPass {

    private final double b0;
    private final double a1;
    private final double a2;
    private double in1;
    private double in2;
    private double out1;
    private double out2;

    BandPass(double centreHz, double q, int ratePerSecond) {
      double omega = 2 * StrictMath.PI * centreHz / ratePerSecond;
      double alpha = StrictMath.sin(omega) / (2 * q);
      b0 = alpha / (1 + alpha);
      a1 = -2 * StrictMath.cos(omega) / (1 + alpha);
      a2 = (1 - alpha) / (1 + alpha);
    }

    double next(double in) {
      double out = b0 * (in - in2) - a1 * out1 - a2 * out2;
      in2 = in1;
      in1 = in;
      out2 = out1;
      out1 = out;
      return out;
    }
  }
}
