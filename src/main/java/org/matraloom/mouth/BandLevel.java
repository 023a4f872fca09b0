package org.matraloom.mouth;

import java.util.Arrays;

/**
 * How strong a band of a sound is from frame to frame, without delay.
 *
 * <p>The band is cut out by single poles that run forwards and backwards, and its strength is the
 * root of its mean square under a raised cosine.
 */
final class BandLevel {

  private static final double SMOOTH_SECONDS = 0.008;
  private static final int PASSES = 2;

  private final int fromFrame;
  private final double[] level;

  private BandLevel(int fromFrame, double[] level) {
    this.fromFrame = fromFrame;
    this.level = level;
  }

  /** The level of a band in a part of a sound; what lies outside the part is taken for silence. */
  static BandLevel of(
      float[] sound, int fromFrame, int toFrame, OnsetBand band, int ratePerSecond) {
    double[] part = band(Arrays.copyOfRange(sound, fromFrame, toFrame), band, ratePerSecond);
    return new BandLevel(fromFrame, smoothed(part, (int) (SMOOTH_SECONDS * ratePerSecond)));
  }

  /** What of a sound lies in a band, without delay. */
  private static double[] band(float[] sound, OnsetBand band, int ratePerSecond) {
    double[] part = new double[sound.length];
    Arrays.setAll(part, i -> sound[i]);
    for (int pass = 0; pass < PASSES; pass++) {
      double[] below = lowPass(part, band.lowHz() / ratePerSecond);
      for (int i = 0; i < part.length; i++) {
        part[i] -= below[i];
      }
      part = lowPass(part, band.highHz() / ratePerSecond);
    }
    return part;
  }

  /** What of a sound lies below a frequency, by one pole each way. */
  static double[] below(float[] sound, double cyclesAFrame) {
    double[] all = new double[sound.length];
    Arrays.setAll(all, i -> sound[i]);
    return lowPass(all, cyclesAFrame);
  }

  int fromFrame() {
    return fromFrame;
  }

  int toFrame() {
    return fromFrame + level.length;
  }

  /** The level at a frame, 1 being a constant full scale; at the nearest end outside the part. */
  double at(int frame) {
    return level[Math.max(0, Math.min(level.length - 1, frame - fromFrame))];
  }

  /** Where the level is highest; the first of equally high places. */
  int top(int from, int to) {
    int top = from;
    for (int frame = from; frame < to; frame++) {
      top = at(frame) > at(top) ? frame : top;
    }
    return top;
  }

  /** Where the level is lowest; the last of equally low places. */
  int bottom(int from, int to) {
    int bottom = from;
    for (int frame = from; frame < to; frame++) {
      bottom = at(frame) <= at(bottom) ? frame : bottom;
    }
    return bottom;
  }

  /** One pole, forwards and backwards, so that nothing is delayed. */
  private static double[] lowPass(double[] x, double cyclesAFrame) {
    double keep = StrictMath.exp(-2 * Math.PI * cyclesAFrame);
    double[] y = x.clone();
    for (int i = 1; i < y.length; i++) {
      y[i] = x[i] + (y[i - 1] - x[i]) * keep;
    }
    for (int i = y.length - 2; i >= 0; i--) {
      y[i] = y[i] + (y[i + 1] - y[i]) * keep;
    }
    return y;
  }

  /**
   * The root of the mean square under a raised cosine: the cosine is turned on step by step, so
   * that a frame costs the same whatever the width.
   */
  private static double[] smoothed(double[] x, int width) {
    int half = width / 2;
    double turn = 2 * Math.PI / width;
    double[] flat = new double[x.length + 1];
    double[] cos = new double[x.length + 1];
    double[] sin = new double[x.length + 1];
    for (int i = 0; i < x.length; i++) {
      double power = x[i] * x[i];
      flat[i + 1] = flat[i] + power;
      cos[i + 1] = cos[i] + power * Math.cos(turn * (i % width));
      sin[i + 1] = sin[i] + power * Math.sin(turn * (i % width));
    }
    double[] y = new double[x.length];
    for (int i = 0; i < y.length; i++) {
      int a = Math.max(0, i - half);
      int b = Math.min(x.length, i + half + 1);
      double angle = turn * (i % width);
      double turned = Math.cos(angle) * (cos[b] - cos[a]) + Math.sin(angle) * (sin[b] - sin[a]);
      y[i] = Math.sqrt(Math.max(0, (flat[b] - flat[a] + turned) / width));
    }
    return y;
  }
}
