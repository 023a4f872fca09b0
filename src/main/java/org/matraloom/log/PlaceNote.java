package org.matraloom.log;

/**
 * How far off one take was at one place.
 *
 * @param place the place
 * @param off how late, in ms, or how fast, in percent; negative if early or slow; at most an hour
 */
public record PlaceNote(ScorePlace place, double off) {

  /** The most places that a record keeps; one of a long piece keeps the first ones. */
  public static final int MOST = 64;

  private static final double LARGEST = 3_600_000;

  /**
   * Checks the range.
   *
   * @throws IllegalArgumentException if it is outside
   */
  public PlaceNote {
    if (!(Math.abs(off) <= LARGEST)) {
      throw new IllegalArgumentException("off is out of range: " + off);
    }
  }
}
