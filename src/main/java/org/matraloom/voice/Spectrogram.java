package org.matraloom.voice;

import be.tarsos.dsp.util.fft.FFT;

/**
 * How strong speech is at every moment and frequency.
 *
 * <p>The window is short, so that single pulses of the voice show as strokes and formants as bands.
 */
public final class Spectrogram {

  private static final int SPECTRUM = 2048;
  private static final double WINDOW_SECONDS = 0.006;
  private static final double LIFT_DB_PER_OCTAVE = 6;

  private final float[] samples;
  private final int ratePerSecond;

  /**
   * Keeps the samples; they are not copied.
   *
   * @param samples one channel
   * @param ratePerSecond frames a second
   */
  public Spectrogram(float[] samples, int ratePerSecond) {
    this.samples = samples;
    this.ratePerSecond = ratePerSecond;
  }

  /**
   * The levels at one moment, from 0 Hz up; the natural fall of a voice is lifted.
   *
   * @param frame the moment, in frames from the beginning
   * @param rows how many levels, at equal steps of frequency
   * @param highestHz the frequency where the last row ends, below half the rate
   * @return the levels in decibels
   */
  public double[] levelsDb(int frame, int rows, int highestHz) {
    int window = (int) (WINDOW_SECONDS * ratePerSecond);
    int from = frame - window / 2;
    float[] part = new float[SPECTRUM];
    for (int i = 0; i < window; i++) {
      if (from + i >= 0 && from + i < samples.length) {
        double weight = 0.5 - 0.5 * Math.cos(2 * Math.PI * (i + 0.5) / window);
        part[i] = (float) (weight * samples[from + i]);
      }
    }
    new FFT(SPECTRUM).forwardTransform(part);
    double[] levels = new double[rows];
    for (int y = 0; y < rows; y++) {
      double hz = (y + 0.5) * highestHz / rows;
      int bin = (int) Math.round(hz * SPECTRUM / ratePerSecond);
      double power = part[2 * bin] * part[2 * bin] + part[2 * bin + 1] * part[2 * bin + 1];
      double octaves = Math.log(Math.max(hz, 250) / 1000) / Math.log(2);
      levels[y] = 10 * Math.log10(power + 1e-12) + LIFT_DB_PER_OCTAVE * octaves;
    }
    return levels;
  }
}
