package org.matraloom.device;

import java.util.SplittableRandom;

/** Short clicks at uneven distances, to be found again in a recording. */
final class CalibrationClicks {

  /** How many are measured. */
  static final int COUNT = 20;

  /** The longest delay that can be told from the next click, in milliseconds. */
  static final int LONGEST_DELAY_MS = 500;

  private static final int FIRST_MS = 1000;
  private static final int LEAST_GAP_MS = 550;
  private static final int MOST_GAP_MS = 750;
  private static final int CLICK_MS = 4;
  private static final double PEAK = 0.5;
  private static final long SEED = 20;

  private final long[] frames = new long[COUNT];
  private final float[] click;
  private final int lengthFrames;

  CalibrationClicks(int ratePerSecond) {
    SplittableRandom random = new SplittableRandom(SEED);
    long frame = (long) ratePerSecond * FIRST_MS / 1000;
    for (int i = 0; i < COUNT; i++) {
      frames[i] = frame;
      frame += (long) ratePerSecond * random.nextInt(LEAST_GAP_MS, MOST_GAP_MS) / 1000;
    }
    lengthFrames = Math.toIntExact(frame);
    click = new float[ratePerSecond * CLICK_MS / 1000];
    for (int i = 0; i < click.length; i++) {
      double fall = 1 - (double) i / click.length;
      click[i] = (float) (PEAK * fall * (random.nextDouble() * 2 - 1));
    }
  }

  /** Where the clicks begin, in frames. */
  long frame(int number) {
    return frames[number];
  }

  float[] click() {
    return click.clone();
  }

  /** All of them on one channel, with quiet before, between and after. */
  float[] samples() {
    float[] samples = new float[lengthFrames];
    for (long frame : frames) {
      System.arraycopy(click, 0, samples, (int) frame, click.length);
    }
    return samples;
  }
}
