package org.matraloom.sound;

import java.util.Arrays;

/**
 * Holds peaks under a ceiling without changing what is under it already.
 *
 * <p>It looks ahead: the gain is down before a peak arrives, so no peak is clipped and no step is
 * heard. Both sides share one gain. The gain is a fixed-point number, summed exactly, so it is
 * exactly 1 wherever nothing has to be held and samples pass unchanged. Output comes {@link
 * #delayFrames()} late.
 */
final class Limiter {

  /** The ceiling; half a dB is left for peaks between samples, under the -1 dBTP that is meant. */
  static final double CEILING_DBFS = -1.5;

  private static final int LOOK_AHEAD_MS = 3;
  private static final int RELEASE_MS = 80;
  private static final long ONE = 1L << 30;

  /** Added to the recovery of every frame, so that it comes to an end. */
  private static final long LEAST_STEP = ONE >> 20;

  private final double ceiling = Mix.linear(CEILING_DBFS);
  private final int window;
  private final long releaseFrames;

  private final float[] leftWaiting;
  private final float[] rightWaiting;
  private float[] line = new float[0];
  private int position;

  private final long[] wanted;
  private long lowest = ONE;
  private int lowestAge;

  private final long[] held;
  private long heldSum;
  private long recovering = ONE;

  Limiter(int ratePerSecond) {
    window = ratePerSecond * LOOK_AHEAD_MS / 1000;
    releaseFrames = (long) ratePerSecond * RELEASE_MS / 1000;
    leftWaiting = new float[window];
    rightWaiting = new float[window];
    wanted = new long[window];
    held = new long[window];
    Arrays.fill(wanted, ONE);
    Arrays.fill(held, ONE);
    heldSum = ONE * window;
  }

  int delayFrames() {
    return window - 1;
  }

  /** Replaces the frames of a block by those that went in {@link #delayFrames()} earlier. */
  void process(float[] left, float[] right, int frames) {
    if (isOpen() && peak(left, right, frames) <= ceiling) {
      delay(left, right, frames);
      return;
    }
    for (int i = 0; i < frames; i++) {
      leftWaiting[position] = left[i];
      rightWaiting[position] = right[i];
      want(Math.max(Math.abs(left[i]), Math.abs(right[i])));
      double gain = (double) hold() / ONE;
      position = position + 1 == window ? 0 : position + 1;
      left[i] = (float) (leftWaiting[position] * gain);
      right[i] = (float) (rightWaiting[position] * gain);
    }
  }

  /** Whether nothing is held back, now or by anything that waits. */
  private boolean isOpen() {
    return lowest == ONE && recovering == ONE && heldSum == ONE * window;
  }

  /** Without their signs, the bits of numbers stand in the order of the numbers. */
  private static float peak(float[] left, float[] right, int frames) {
    int highest = 0;
    for (int i = 0; i < frames; i++) {
      int l = Float.floatToRawIntBits(left[i]) & Integer.MAX_VALUE;
      int r = Float.floatToRawIntBits(right[i]) & Integer.MAX_VALUE;
      highest = l > highest ? l : highest;
      highest = r > highest ? r : highest;
    }
    return Float.intBitsToFloat(highest);
  }

  /** Most of a piece passes at a gain of exactly 1 and need only wait. */
  private void delay(float[] left, float[] right, int frames) {
    passThrough(left, leftWaiting, frames);
    passThrough(right, rightWaiting, frames);
    position = 0;
    lowestAge = 0;
  }

  /** Sends a block through the frames that wait, the oldest of which is at the position. */
  private void passThrough(float[] block, float[] waiting, int frames) {
    int delay = window - 1;
    if (line.length < delay + frames) {
      line = new float[delay + frames];
    }
    int oldest = position + 1 == window ? 0 : position + 1;
    int first = Math.min(delay, window - oldest);
    System.arraycopy(waiting, oldest, line, 0, first);
    System.arraycopy(waiting, 0, line, first, delay - first);
    System.arraycopy(block, 0, line, delay, frames);
    System.arraycopy(line, 0, block, 0, frames);
    System.arraycopy(line, frames, waiting, 1, delay);
  }

  /** Keeps the lowest gain that any waiting frame needs. */
  private void want(double peak) {
    long gain = peak > ceiling ? (long) (ceiling / peak * ONE) : ONE;
    wanted[position] = gain;
    lowestAge++;
    if (gain <= lowest) {
      lowest = gain;
      lowestAge = 0;
    } else if (lowestAge >= window) {
      findLowest();
    }
  }

  private void findLowest() {
    lowest = ONE;
    for (int age = window - 1; age >= 0; age--) {
      long gain = wanted[Math.floorMod(position - age, window)];
      if (gain <= lowest) {
        lowest = gain;
        lowestAge = age;
      }
    }
  }

  /** The mean over the window of a gain that falls at once and recovers slowly. */
  private long hold() {
    long recovered = Math.min(ONE, recovering + (ONE - recovering) / releaseFrames + LEAST_STEP);
    recovering = Math.min(recovered, lowest);
    heldSum += recovering - held[position];
    held[position] = recovering;
    return heldSum / window;
  }
}
