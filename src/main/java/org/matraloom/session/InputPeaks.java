package org.matraloom.session;

import java.util.Arrays;

/** The largest sample of each millisecond, of the first two minutes; one thread adds. */
final class InputPeaks {

  static final int PER_SECOND = 1_000;

  private static final int MOST = 120 * PER_SECOND;

  private final int ratePerSecond;
  private final float[] peaks = new float[MOST];
  private long frames;
  private volatile int whole;

  InputPeaks(int ratePerSecond) {
    this.ratePerSecond = ratePerSecond;
  }

  void add(float[] samples, int count) {
    for (int i = 0; i < count; i++) {
      int at = place(frames++);
      if (at < MOST) {
        peaks[at] = Math.max(peaks[at], Math.abs(samples[i]));
        whole = at;
      }
    }
  }

  /** Which millisecond a frame lies in. */
  int place(long frame) {
    return (int) Math.min(MOST, frame * PER_SECOND / ratePerSecond);
  }

  /** How many milliseconds are whole. */
  int count() {
    return whole;
  }

  /** The first so many milliseconds, at most {@link #count}. */
  float[] first(int count) {
    return Arrays.copyOf(peaks, Math.min(count, whole));
  }
}
