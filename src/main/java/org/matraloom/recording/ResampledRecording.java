package org.matraloom.recording;

import java.io.IOException;

/**
 * A recording at another rate, by a windowed sinc.
 *
 * <p>Source: J. O. Smith, "Digital Audio Resampling Home Page", Stanford University, 2002 (band
 * limited interpolation); the window is Blackman's.
 */
public final class ResampledRecording implements Recording {

  private static final int ZERO_CROSSINGS = 24;
  private static final int STEPS = 512;

  private final Recording source;
  private final SoundWindow sound;
  private final int ratePerSecond;
  private final double step;
  private final double cutoff;
  private final float[] around;
  private final double[] table = table();
  private long given;
  private final long frames;

  /**
   * Prepares a conversion.
   *
   * @param source the recording from its beginning; closed with this one
   * @param sourceFrames how long it is
   * @param ratePerSecond the rate that is wanted
   */
  public ResampledRecording(Recording source, long sourceFrames, int ratePerSecond) {
    this.source = source;
    this.sound = new SoundWindow(source);
    this.ratePerSecond = ratePerSecond;
    this.step = (double) source.ratePerSecond() / ratePerSecond;
    this.cutoff = Math.min(1, 1 / step);
    this.around = new float[2 * (int) Math.ceil(ZERO_CROSSINGS / cutoff) + 2];
    this.frames = (long) Math.floor(sourceFrames / step);
  }

  long frames() {
    return frames;
  }

  @Override
  public int ratePerSecond() {
    return ratePerSecond;
  }

  @Override
  public int read(float[] block) throws IOException {
    int count = (int) Math.min(block.length, frames - given);
    for (int i = 0; i < count; i++) {
      block[i] = at((given + i) * step);
    }
    given += count;
    return count;
  }

  private float at(double place) throws IOException {
    long first = (long) Math.floor(place) - around.length / 2 + 1;
    sound.copy(first, around);
    double sum = 0;
    for (int i = 0; i < around.length; i++) {
      sum += around[i] * kernel(place - first - i);
    }
    return (float) sum;
  }

  private double kernel(double distance) {
    double place = Math.abs(distance) * cutoff * STEPS;
    int below = (int) place;
    if (below + 1 >= table.length) {
      return 0;
    }
    return cutoff * (table[below] + (place - below) * (table[below + 1] - table[below]));
  }

  /** The right half of the windowed sinc, so many steps to a zero crossing. */
  private static double[] table() {
    double[] table = new double[ZERO_CROSSINGS * STEPS + 1];
    for (int i = 0; i < table.length; i++) {
      double x = (double) i / STEPS;
      double turn = StrictMath.PI * x / ZERO_CROSSINGS;
      double window = 0.42 + 0.5 * StrictMath.cos(turn) + 0.08 * StrictMath.cos(2 * turn);
      double angle = StrictMath.PI * x;
      table[i] = window * (i == 0 ? 1 : StrictMath.sin(angle) / angle);
    }
    return table;
  }

  @Override
  public void close() throws IOException {
    source.close();
  }
}
