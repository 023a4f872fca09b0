package org.matraloom.pulse;

import java.util.Arrays;

/** Middle and spread of numbers, a part of which may be wrong. */
public final class RobustStatistics {

  /** The median of the absolute deviations times this is the standard deviation of a normal law. */
  private static final double NORMAL = 1.4826;

  private RobustStatistics() {}

  /**
   * The median; 0 of nothing.
   *
   * @param values the numbers, in any order; they stay as they are
   * @return the median
   */
  public static double median(double... values) {
    if (values.length == 0) {
      return 0;
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }

  /**
   * The spread around 0, as a standard deviation; 0 of nothing.
   *
   * @param values the numbers
   * @return the spread, in their unit
   */
  public static double spreadAroundZero(double... values) {
    return NORMAL * median(Arrays.stream(values).map(Math::abs).toArray());
  }

  /**
   * The spread around the median, as a standard deviation; 0 of nothing.
   *
   * @param values the numbers
   * @return the spread, in their unit
   */
  public static double spread(double... values) {
    double middle = median(values);
    return spreadAroundZero(Arrays.stream(values).map(value -> value - middle).toArray());
  }
}
