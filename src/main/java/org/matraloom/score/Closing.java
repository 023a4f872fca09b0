package org.matraloom.score;

import java.util.Optional;

/**
 * How a piece closes after its last matra.
 *
 * @param stroke the sollu said on the landing itself; none if that belongs to what follows
 * @param avartanas how many avartanas the tala goes on after the landing, from 0 to {@value #MOST}
 */
public record Closing(Optional<Stroke> stroke, int avartanas) {

  /** The most avartanas that the tala goes on. */
  public static final int MOST = 16;

  /** Nothing follows the last matra. */
  public static final Closing NONE = new Closing(Optional.empty(), 0);

  /**
   * Checks the number.
   *
   * @throws IllegalArgumentException if the avartanas are outside their range
   */
  public Closing {
    if (avartanas < 0 || avartanas > MOST) {
      throw new IllegalArgumentException(
          "the tala goes on for 0 to " + MOST + " avartanas, given " + avartanas);
    }
  }

  /**
   * How many avartanas the tala goes on where nothing is said of it: one after a last stroke, so
   * that it is heard to stand on the beat; else none.
   *
   * @param stroke the last stroke, if there is one
   * @return 1 or 0
   */
  public static int usualAvartanas(Optional<Stroke> stroke) {
    return stroke.isPresent() ? 1 : 0;
  }
}
