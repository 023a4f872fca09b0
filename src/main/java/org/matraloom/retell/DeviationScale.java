package org.matraloom.retell;

import java.util.List;
import org.matraloom.follow.SaidSollu;

/**
 * What the upper and the lower edge of a row stand for.
 *
 * @param milliseconds how late the upper edge is, and how early the lower
 */
record DeviationScale(int milliseconds) {

  private static final List<Integer> STEPS = List.of(20, 30, 40, 60, 80, 100, 150, 200, 300, 500);

  /** Nearly all marks stand inside; the few others are shown at the edge. */
  private static final double SHARE_INSIDE = 0.97;

  static DeviationScale of(List<SaidSollu> sollus) {
    double[] sizes =
        sollus.stream().mapToDouble(said -> Math.abs(said.deviationSeconds())).sorted().toArray();
    double large =
        sizes.length == 0 ? 0 : sizes[(int) Math.ceil(SHARE_INSIDE * sizes.length) - 1] * 1000;
    int fits = STEPS.stream().filter(step -> step >= large).findFirst().orElse(last());
    return new DeviationScale(fits);
  }

  private static int last() {
    return STEPS.get(STEPS.size() - 1);
  }

  /** A deviation as a part of the scale, -1 to 1. */
  double part(double seconds) {
    return Math.max(-1, Math.min(1, seconds * 1000 / milliseconds));
  }

  boolean isBeyond(double seconds) {
    return Math.abs(seconds) * 1000 > milliseconds;
  }
}
