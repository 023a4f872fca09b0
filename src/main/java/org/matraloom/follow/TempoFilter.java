package org.matraloom.follow;

/** How the tempo of a way to pair follows its intervals: the slow part of an alpha-beta filter. */
final class TempoFilter {

  /** With this share of what an interval is off, the tempo follows it. */
  private static final double BETA = 0.08;

  private static final double SLOWEST_RATE = 1.16;
  private static final double FASTEST_RATE = 0.86;
  private static final double STRAINED_RATE = 0.05;
  private static final double STRAIN = 0.05;

  private TempoFilter() {}

  /**
   * The tempo after an interval.
   *
   * @param rate how much slower than usual the take was before
   * @param excess by what share of its length the interval is longer than that
   */
  static double rate(double rate, double excess) {
    return Math.max(FASTEST_RATE, Math.min(SLOWEST_RATE, rate * (1 + BETA * excess)));
  }

  /** What it costs at every sollu to be at another tempo than the take as a whole. */
  static double strain(double rate) {
    double off = (rate - 1) / STRAINED_RATE;
    return STRAIN * off * off;
  }
}
