package org.matraloom.score;

/**
 * Which finger follows the thumb in a laghu of more than six aksharas; both customs are taught.
 *
 * <p>Sources: a Telugu reference restarts (te.wikipedia.org, talas); saayujya.com goes "little
 * finger towards the thumb and back".
 */
public enum FingerCustom {
  /** After the thumb the count starts again at the little finger. */
  RESTART,
  /** After the thumb the count comes back: index, middle, ring. */
  RETURN;

  private static final int FINGERS = Finger.values().length;

  /**
   * The finger of one count.
   *
   * @param count which count after the clap, from 0
   * @return the finger
   * @throws IllegalArgumentException if {@code count} is negative
   */
  public Finger finger(int count) {
    if (count < 0) {
      throw new IllegalArgumentException("a finger count is 0 or more, given " + count);
    }
    if (this == RESTART) {
      return Finger.values()[count % FINGERS];
    }
    int thereAndBack = 2 * (FINGERS - 1);
    int step = count % thereAndBack;
    return Finger.values()[step < FINGERS ? step : thereAndBack - step];
  }
}
