package org.matraloom.staircase;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Where a staircase turned, and how far it steps; each turn halves the steps. */
final class Turns {

  /** The first turn tells more of where one began than of where one settles. */
  private static final int LEFT_OUT = 1;

  private static final int FEWEST = 2;

  private final int leastStep;
  private final List<Integer> tempi = new ArrayList<>();

  private int step;
  private int direction;

  Turns(int firstStep, int leastStep) {
    this.step = firstStep;
    this.leastStep = leastStep;
  }

  /** Notes a move from a tempo; if it goes the other way than the last, the steps are halved. */
  void moved(int fromTempo, boolean isUp) {
    int now = isUp ? 1 : -1;
    if (direction == -now) {
      tempi.add(fromTempo);
      step = Math.max(leastStep, (step + 1) / 2);
    }
    direction = now;
  }

  /** How far the next move goes, in beats a minute. */
  int size() {
    return step;
  }

  /**
   * The mean tempo of the turns after the first, an even number of them, so that peaks and valleys
   * count alike; empty if there are too few.
   */
  OptionalDouble mean() {
    int known = tempi.size() - LEFT_OUT;
    int counted = known - known % 2;
    return counted < FEWEST
        ? OptionalDouble.empty()
        : tempi.subList(tempi.size() - counted, tempi.size()).stream()
            .mapToInt(Integer::intValue)
            .average();
  }
}
