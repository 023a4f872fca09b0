package org.matraloom.mouth;

/**
 * A part of a sample and how long it is to sound.
 *
 * @param from where it begins in the sample
 * @param to where it ends there
 * @param frames how long it sounds
 */
record SoundedPart(int from, int to, int frames) {

  /** Drawn out further than this, a part is gone through to and fro at its own pace. */
  private static final double LONGEST_SLOWED = 2;

  /** Whether it is left as it is, perhaps cut short. */
  boolean isPlain() {
    return frames <= to - from;
  }

  /** The place in the sample if the part is gone through once. */
  double slowed(double sounded) {
    return from + sounded * (to - from) / Math.max(1, frames);
  }

  /**
   * The place in the sample whose period is heard: so that a short vowel drawn out for long does
   * not freeze, it is gone through to and fro.
   */
  double heard(double sounded) {
    int length = to - from;
    if (frames <= LONGEST_SLOWED * length) {
      return slowed(sounded);
    }
    int ways = 2 * (int) Math.round(0.5 * frames / length) + 1;
    double way = sounded * ways / frames;
    double along = way % 2;
    return from + length * (along <= 1 ? along : 2 - along);
  }
}
