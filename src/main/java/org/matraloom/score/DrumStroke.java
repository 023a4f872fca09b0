package org.matraloom.score;

import java.util.Locale;

/**
 * A stroke on one of the two heads of a drum; the names are those that drummers use for the
 * plainest strokes (common practice).
 */
public enum DrumStroke {
  /** Right head, rim, the ring finger resting. */
  NAM(true),
  /** Right head, open. */
  DIN(true),
  /** Right head, at the edge of the load. */
  CHAPU(true),
  /** Right head, flat fingers that stay. */
  TA(true),
  /** Right head, two fingers in the middle that stay. */
  KI(true),
  /** Left head, open. */
  THOM(false),
  /** Left head, the flat hand that stays. */
  THA(false);

  private final boolean right;

  DrumStroke(boolean right) {
    this.right = right;
  }

  /**
   * How it is written in a list.
   *
   * @return the name in small letters
   */
  public String written() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Which head is struck.
   *
   * @return true for the right one, which bears the load
   */
  public boolean isRight() {
    return right;
  }
}
