package org.matraloom.pulse;

import java.util.SplittableRandom;

/**
 * Seeks the line that most of some points lie near, each trial through points drawn by lot.
 *
 * <p>Random sample consensus (M. A. Fischler and R. C. Bolles, Commun. ACM 24 (1981) 381-395) with
 * the bounded cost of P. H. S. Torr and A. Zisserman, Comput. Vis. Image Underst. 78 (2000)
 * 138-156. The lot has a fixed seed.
 */
final class PulseSearch {

  private static final int TRIALS = 600;
  private static final long SEED = 20_260_704L;

  /** The tempo changes by at most this share from one end to the other. */
  private static final double MOST_DRIFT = 0.25;

  private final double[] x;
  private final double[] seconds;
  private double length;
  private double growth;

  /**
   * Prepares a search.
   *
   * @param x beats, from 0; at least one point
   * @param seconds when
   */
  PulseSearch(double[] x, double[] seconds) {
    this.x = x.clone();
    this.seconds = seconds.clone();
  }

  /**
   * Looks for the line.
   *
   * @param mayGrow whether the beats may grow or shrink
   * @return whether there is one
   */
  boolean look(boolean mayGrow) {
    SplittableRandom random = new SplittableRandom(SEED);
    double least = Double.POSITIVE_INFINITY;
    for (int trial = 0; trial < TRIALS; trial++) {
      double[] tried = through(random, mayGrow && trial % 2 == 1);
      if (tried.length == 0) {
        continue;
      }
      double cost = cost(tried);
      if (cost < least) {
        least = cost;
        length = tried[1];
        growth = tried[2];
      }
    }
    return least < Double.POSITIVE_INFINITY;
  }

  /** The length of the first beat, in seconds; 0 before a line was found. */
  double length() {
    return length;
  }

  /** The coefficient of the square of the beats, in seconds. */
  double growth() {
    return growth;
  }

  private double cost(double[] line) {
    double cost = 0;
    for (int i = 0; i < x.length; i++) {
      double off =
          (seconds[i] - line[0] - x[i] * (line[1] + x[i] * line[2])) / PulseFit.NEAR_SECONDS;
      cost += Math.min(1, off * off);
    }
    return cost;
  }

  /** Begin, length and growth of a line through points drawn by lot; empty if it cannot be. */
  private double[] through(SplittableRandom random, boolean growing) {
    int a = random.nextInt(x.length);
    int b = random.nextInt(x.length);
    if (x[a] == x[b]) {
      return new double[0];
    }
    double slope = (seconds[b] - seconds[a]) / (x[b] - x[a]);
    double bend = 0;
    if (growing) {
      int c = random.nextInt(x.length);
      if (x[c] == x[a] || x[c] == x[b]) {
        return new double[0];
      }
      double other = (seconds[c] - seconds[a]) / (x[c] - x[a]);
      bend = (other - slope) / (x[c] - x[b]);
      slope -= bend * (x[b] + x[a]);
    }
    double last = slope + 2 * bend * x[x.length - 1];
    if (slope <= 0 || last <= 0 || Math.abs(last / slope - 1) > MOST_DRIFT) {
      return new double[0];
    }
    return new double[] {seconds[a] - x[a] * (slope + x[a] * bend), slope, bend};
  }
}
