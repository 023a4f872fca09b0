package org.matraloom.device;

import java.util.Arrays;

/**
 * How many frames the input is ahead of the output, from many looks at both counters.
 *
 * <p>Devices count in steps of up to some tens of milliseconds, so a single look says little; the
 * median of many looks at odd moments says the same each time. One thread looks, without
 * allocating; any may ask.
 */
public final class ClockOffset {

  /** So many looks are enough, the first ones are kept. */
  private static final int MOST_LOOKS = 200;

  private static final int FEWEST_LOOKS = 50;

  private final long[] differences = new long[MOST_LOOKS];
  private volatile int looks;

  /**
   * Notes what both devices have counted at one moment.
   *
   * @param capturedFrames frames that the input has counted
   * @param playedFrames frames that the output has counted
   */
  public void look(long capturedFrames, long playedFrames) {
    if (looks < MOST_LOOKS) {
      differences[looks] = capturedFrames - playedFrames;
      looks = looks + 1;
    }
  }

  /**
   * Whether the counters have been looked at often enough.
   *
   * @return whether {@link #frames} can be asked
   */
  public boolean isKnown() {
    return looks >= FEWEST_LOOKS;
  }

  /**
   * Captured frames less played frames.
   *
   * @return frames; negative if the output is ahead
   */
  public long frames() {
    int known = looks;
    long[] sorted = Arrays.copyOf(differences, known);
    Arrays.sort(sorted);
    return sorted[known / 2];
  }
}
