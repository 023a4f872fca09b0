package org.matraloom.log;

/**
 * Whether numbers rise or fall: the rank test of H. B. Mann (Econometrica 13 (1945) 245-259), two
 * sided, at one chance in twenty.
 *
 * <p>Up to {@value #MOST_EXACT} numbers without ties the chance is counted out over all orders;
 * otherwise it is taken from the normal curve, with ties and continuity corrected (M. G. Kendall,
 * Rank Correlation Methods, 4th ed. 1975).
 */
final class RankTrend {

  /** With fewer numbers no order is unlikely enough: of four, 2 in 24. */
  static final int LEAST = 5;

  private static final int MOST_EXACT = 30;
  private static final double CHANCE = 0.05;
  private static final double NORMAL = 1.959964;

  private RankTrend() {}

  /**
   * Which way the numbers go.
   *
   * @param values in order of time
   * @return 1 if they rise, -1 if they fall, 0 if that cannot be told
   */
  static int of(double... values) {
    int sum = sum(values);
    if (values.length < LEAST || sum == 0) {
      return 0;
    }
    double tied = tied(values);
    boolean isSure =
        tied == 0 && values.length <= MOST_EXACT
            ? 2 * chance(values.length, Math.abs(sum)) <= CHANCE
            : (Math.abs(sum) - 1) / Math.sqrt(variance(values.length, tied)) >= NORMAL;
    return isSure ? Integer.signum(sum) : 0;
  }

  /** Pairs that rise, less pairs that fall. */
  static int sum(double... values) {
    int sum = 0;
    for (int i = 0; i < values.length; i++) {
      for (int j = i + 1; j < values.length; j++) {
        sum += (int) Math.signum(values[j] - values[i]);
      }
    }
    return sum;
  }

  /** The chance of such a sum or a greater one, if every order is as likely. */
  static double chance(int count, int sum) {
    int pairs = count * (count - 1) / 2;
    double[] ways = new double[pairs + 1];
    ways[0] = 1;
    for (int n = 2; n <= count; n++) {
      double[] next = new double[pairs + 1];
      for (int falling = 0; falling <= pairs; falling++) {
        for (int k = 0; k < n && k <= falling; k++) {
          next[falling] += ways[falling - k] / n;
        }
      }
      ways = next;
    }
    double chance = 0;
    for (int falling = 0; pairs - 2 * falling >= sum; falling++) {
      chance += ways[falling];
    }
    return chance;
  }

  private static double variance(int count, double tied) {
    return (count * (count - 1.0) * (2.0 * count + 5) - tied) / 18;
  }

  /** What ties take from the variance; every number of a tie brings its share of it. */
  private static double tied(double... values) {
    double sum = 0;
    for (double value : values) {
      int same = 0;
      for (double other : values) {
        same += other == value ? 1 : 0;
      }
      sum += (same - 1.0) * (2.0 * same + 5);
    }
    return sum;
  }
}
