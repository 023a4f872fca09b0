package org.matraloom.voice;

import java.util.Arrays;

/**
 * Finds the vowel onset in a wave, with nothing to go by but the wave and roughly where to look.
 *
 * <p>Where the voice sets in after a closure, the band of the first formant rises; where a murmur
 * opens, the bands above it do. The onset is taken where the level has climbed half of the way, as
 * in the beat detector of F. Cummins and R. Port, J. Phonetics 26 (1998) 145-171, in narrower time.
 */
public final class VowelOnset {

  /** Which change marks the onset. */
  public enum Mark {
    /** The voice begins: low frequencies. */
    VOICE,
    /** The mouth opens: higher frequencies. */
    OPENING
  }

  private static final int RATE = SpokenLine.RATE;
  private static final int SEARCH_MS = 14;
  private static final int SMOOTH_MS = 8;

  private VowelOnset() {}

  /** The frame at which the vowel begins, near a frame. */
  public static double frame(float[] wave, int nearFrame, Mark mark) {
    double[] band =
        mark == Mark.VOICE ? band(wave, nearFrame, 150, 900) : band(wave, nearFrame, 600, 3500);
    int half = band.length / 2;
    int reach = SEARCH_MS * RATE / 1000;
    int top = half;
    for (int i = half - reach; i <= half + reach; i++) {
      top = band[i] > band[top] ? i : top;
    }
    int bottom = top;
    for (int i = top; i >= half - reach; i--) {
      bottom = band[i] < band[bottom] ? i : bottom;
    }
    double middle = (band[top] + band[bottom]) / 2;
    int at = bottom;
    while (at < top && band[at] < middle) {
      at++;
    }
    return nearFrame + at - half;
  }

  /** The smoothed strength of a band around a frame. */
  private static double[] band(float[] wave, int near, double lowHz, double highHz) {
    int reach = RATE / 10;
    double[] part = new double[2 * reach];
    for (int i = 0; i < part.length; i++) {
      part[i] = wave[near - reach + i];
    }
    for (int pass = 0; pass < 2; pass++) {
      part = lowPass(highPass(part, lowHz), highHz);
    }
    int window = SMOOTH_MS * RATE / 1000;
    double[] weights = new double[window + 1];
    Arrays.setAll(weights, k -> 0.5 + 0.5 * Math.cos(2 * Math.PI * (k - window / 2) / window));
    double[] smooth = new double[part.length];
    for (int i = window; i < part.length - window; i++) {
      double sum = 0;
      for (int j = -window / 2; j <= window / 2; j++) {
        sum += weights[j + window / 2] * part[i + j] * part[i + j];
      }
      smooth[i] = Math.sqrt(sum);
    }
    return smooth;
  }

  private static double[] highPass(double[] x, double hz) {
    double[] low = lowPass(x, hz);
    double[] high = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      high[i] = x[i] - low[i];
    }
    return high;
  }

  /** One pole, forwards and backwards, so that nothing is delayed. */
  private static double[] lowPass(double[] x, double hz) {
    double keep = Math.exp(-2 * Math.PI * hz / RATE);
    double[] y = x.clone();
    for (int i = 1; i < y.length; i++) {
      y[i] = x[i] + (y[i - 1] - x[i]) * keep;
    }
    for (int i = y.length - 2; i >= 0; i--) {
      y[i] = y[i] + (y[i + 1] - y[i]) * keep;
    }
    return y;
  }
}
