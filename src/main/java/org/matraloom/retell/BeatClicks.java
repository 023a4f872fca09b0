package org.matraloom.retell;

import java.util.List;

/** Short clicks at given frames, to be added to a sound block by block. */
final class BeatClicks {

  /** A click. */
  record Click(long frame, boolean samam) {}

  private static final double LENGTH_SECONDS = 0.030;
  private static final double DECAY_SECONDS = 0.005;
  private static final double BEAT_HZ = 1_500;
  private static final double SAMAM_HZ = 2_250;
  private static final double SOFTER = 0.7;

  private final List<Click> clicks;
  private final float[] beat;
  private final float[] samam;
  private int next;

  /**
   * Makes the clicks.
   *
   * @param clicks where they are, in order
   * @param ratePerSecond frames a second
   * @param peak the peak of a click on samam; others are softer
   */
  BeatClicks(List<Click> clicks, int ratePerSecond, double peak) {
    this.clicks = List.copyOf(clicks);
    this.beat = sound(ratePerSecond, BEAT_HZ, SOFTER * peak);
    this.samam = sound(ratePerSecond, SAMAM_HZ, peak);
  }

  private static float[] sound(int ratePerSecond, double hz, double peak) {
    float[] sound = new float[(int) (LENGTH_SECONDS * ratePerSecond)];
    double highest = 0;
    for (int i = 0; i < sound.length; i++) {
      double t = (double) i / ratePerSecond;
      double end = 1 - (double) i / sound.length;
      double wave = StrictMath.sin(2 * StrictMath.PI * hz * t);
      sound[i] = (float) (end * StrictMath.exp(-t / DECAY_SECONDS) * wave);
      highest = Math.max(highest, Math.abs(sound[i]));
    }
    for (int i = 0; i < sound.length; i++) {
      sound[i] *= (float) (peak / highest);
    }
    return sound;
  }

  /** Adds them to the next block; blocks must come in order, without gaps. */
  void addTo(float[] block, int count, long firstFrame) {
    while (next < clicks.size() && endOf(clicks.get(next)) <= firstFrame) {
      next++;
    }
    for (int i = next; i < clicks.size() && clicks.get(i).frame() < firstFrame + count; i++) {
      Click click = clicks.get(i);
      float[] sound = click.samam() ? samam : beat;
      long from = Math.max(firstFrame, click.frame());
      long to = Math.min(firstFrame + count, endOf(click));
      for (long frame = from; frame < to; frame++) {
        block[(int) (frame - firstFrame)] += sound[(int) (frame - click.frame())];
      }
    }
  }

  private long endOf(Click click) {
    return click.frame() + beat.length;
  }
}
