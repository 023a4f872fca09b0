package org.matraloom.fit;

/**
 * Whole numbers to try, both ends included.
 *
 * @param low the smallest, not negative
 * @param high the largest, at most {@value #HIGHEST}
 */
public record WholeRange(int low, int high) {

  /** The largest number that is ever tried. */
  public static final int HIGHEST = 10_000;

  /**
   * Checks the ends.
   *
   * @throws IllegalArgumentException if they are out of order or out of range
   */
  public WholeRange {
    if (low < 0 || high < low || high > HIGHEST) {
      throw new IllegalArgumentException(
          "a range runs from 0 up to " + HIGHEST + " at most, given " + low + ".." + high);
    }
  }

  /**
   * A range of one number.
   *
   * @param value the number
   * @return the range
   */
  public static WholeRange only(int value) {
    return new WholeRange(value, value);
  }

  /**
   * How many numbers there are.
   *
   * @return at least 1
   */
  public long size() {
    return high - low + 1L;
  }

  /**
   * Whether there is nothing to choose.
   *
   * @return true if the ends are equal
   */
  public boolean isFixed() {
    return low == high;
  }

  /**
   * Whether a number lies in the range.
   *
   * @param value the number
   * @return true if it does
   */
  public boolean contains(long value) {
    return value >= low && value <= high;
  }
}
