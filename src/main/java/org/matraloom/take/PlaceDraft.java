package org.matraloom.take;

import java.util.Arrays;

/** Gathers, for one onset, the best way to each place of the score; keeps the likeliest places. */
final class PlaceDraft {

  /** Where in the score the performer may be at one onset, and how they got there. */
  record Places(int[] sollu, double[] score, int[] fromOnset, int[] fromPlace) {}

  /** A place that is worse than the best by this much is given up: more than a restart. */
  private static final double HOPELESS = 10;

  private final double[] score;
  private final int[] fromOnset;
  private final int[] fromPlace;
  private final int[] offered;
  private int count;

  PlaceDraft(int sollus) {
    score = new double[sollus];
    fromOnset = new int[sollus];
    fromPlace = new int[sollus];
    offered = new int[sollus];
    Arrays.fill(score, Double.NEGATIVE_INFINITY);
  }

  void clear() {
    for (int i = 0; i < count; i++) {
      score[offered[i]] = Double.NEGATIVE_INFINITY;
    }
    count = 0;
  }

  void offer(int sollu, double value, int onset, int place) {
    if (value > score[sollu]) {
      if (score[sollu] == Double.NEGATIVE_INFINITY) {
        offered[count++] = sollu;
      }
      score[sollu] = value;
      fromOnset[sollu] = onset;
      fromPlace[sollu] = place;
    }
  }

  /**
   * The likeliest places, in order of the score; of equally likely ones the earlier.
   *
   * @param most no more than so many
   * @param gain what the onset adds to the score of each
   */
  Places best(int most, double gain) {
    double[] scores = new double[count];
    for (int i = 0; i < count; i++) {
      scores[i] = score[offered[i]];
    }
    Arrays.sort(scores);
    double bar = count == 0 ? 0 : scores[count - 1] - HOPELESS;
    double least = count > most ? Math.max(bar, scores[count - most]) : bar;
    Arrays.sort(offered, 0, count);
    int room = Math.min(most, count);
    for (int i = 0; i < count; i++) {
      room -= score[offered[i]] > least ? 1 : 0;
    }
    int[] kept = new int[Math.min(most, count)];
    int taken = 0;
    for (int i = 0; i < count; i++) {
      double here = score[offered[i]];
      if (here > least || (here == least && room-- > 0)) {
        kept[taken++] = offered[i];
      }
    }
    return places(Arrays.copyOf(kept, taken), gain);
  }

  private Places places(int[] kept, double gain) {
    return new Places(
        kept,
        Arrays.stream(kept).mapToDouble(k -> score[k] + gain).toArray(),
        Arrays.stream(kept).map(k -> fromOnset[k]).toArray(),
        Arrays.stream(kept).map(k -> fromPlace[k]).toArray());
  }
}
