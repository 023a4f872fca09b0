package org.matraloom.onset;

import java.util.ArrayList;
import java.util.List;

/**
 * How sound of one sample rate is cut into windows and these into bands of hearing.
 *
 * @param windowFrames the length of a window
 * @param stepFrames from one window to the next
 * @param size the length of the transform, in samples
 * @param bands those that the rate can carry, from the lowest to the highest
 */
record HearingBands(int windowFrames, int stepFrames, int size, List<MelBand> bands) {

  /** How many bands there are, from the lowest to the highest. */
  static final int BANDS = 24;

  static final int STEPS_PER_SECOND = 250;

  private static final double WINDOW_SECONDS = 0.012;
  private static final double LOWEST_HZ = 200;
  private static final double HIGHEST_HZ = 8_000;

  /** The share of the half sample rate up to which a recording is taken to carry sound. */
  private static final double USABLE = 0.95;

  HearingBands {
    bands = List.copyOf(bands);
  }

  /** The windows and bands for so many frames a second. */
  static HearingBands at(int ratePerSecond) {
    int windowFrames = (int) Math.round(WINDOW_SECONDS * ratePerSecond);
    int size = Integer.highestOneBit(windowFrames - 1) * 2;
    double[] edges = new double[BANDS + 2];
    double low = mel(LOWEST_HZ);
    double high = mel(HIGHEST_HZ);
    for (int i = 0; i < edges.length; i++) {
      edges[i] = hertz(low + (high - low) * i / (BANDS + 1));
    }
    double top = Math.min(HIGHEST_HZ, ratePerSecond / 2.0 * USABLE);
    List<MelBand> bands = new ArrayList<>();
    for (int b = 0; b < BANDS && edges[b + 1] <= top; b++) {
      bands.add(
          MelBand.of(edges[b], edges[b + 1], edges[b + 2], ratePerSecond / (double) size, size));
    }
    int stepFrames = Math.max(1, Math.round(ratePerSecond / (float) STEPS_PER_SECOND));
    return new HearingBands(windowFrames, stepFrames, size, bands);
  }

  /** Something that finds the energies of windows; for one thread at a time. */
  WindowAnalysis analysis() {
    return new WindowAnalysis(hann(windowFrames), bands, size);
  }

  /** How many windows at the beginning reach back before it. */
  int windowsCutOff() {
    return (windowFrames + stepFrames - 1) / stepFrames - 1;
  }

  /** The middle of a window, in frames from the beginning; negative for the first windows. */
  double middleFrame(double step) {
    return (step + 1) * stepFrames - windowFrames / 2.0;
  }

  private static float[] hann(int size) {
    float[] window = new float[size];
    double sum = 0;
    for (int i = 0; i < size; i++) {
      double value = 0.5 - 0.5 * StrictMath.cos(2 * StrictMath.PI * (i + 1) / (size + 1));
      window[i] = (float) value;
      sum += value;
    }
    for (int i = 0; i < size; i++) {
      window[i] /= (float) sum;
    }
    return window;
  }

  private static double mel(double hertz) {
    return 2595 * StrictMath.log10(1 + hertz / 700);
  }

  private static double hertz(double mel) {
    return 700 * (StrictMath.pow(10, mel / 2595) - 1);
  }
}
