package org.matraloom.take;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Gathers, for one onset, the best way to each place of the score; keeps the likeliest places. */
final class PlaceDraft {

  /** Where in the score the performer may be at one onset, and how they got there. */
  record Places(int[] sollu, double[] score, int[] fromOnset, int[] fromPlace) {}

  /** A place that is worse than the best by this much is given up: two restarts. */
  private static final double HOPELESS = 14;

  private final double[] score;
  private final int[] fromOnset;
  private final int[] fromPlace;
  private final List<Integer> offered = new ArrayList<>();

  PlaceDraft(int sollus) {
    score = new double[sollus];
    fromOnset = new int[sollus];
    fromPlace = new int[sollus];
    Arrays.fill(score, Double.NEGATIVE_INFINITY);
  }

  void clear() {
    offered.forEach(k -> score[k] = Double.NEGATIVE_INFINITY);
    offered.clear();
  }

  void offer(int sollu, double value, int onset, int place) {
    if (value > score[sollu]) {
      if (score[sollu] == Double.NEGATIVE_INFINITY) {
        offered.add(sollu);
      }
      score[sollu] = value;
      fromOnset[sollu] = onset;
      fromPlace[sollu] = place;
    }
  }

  Places best(int most, double gain) {
    double bar = Double.NEGATIVE_INFINITY;
    for (int k : offered) {
      bar = Math.max(bar, score[k] - HOPELESS);
    }
    List<Integer> kept = new ArrayList<>();
    for (int k : offered) {
      if (score[k] >= bar) {
        kept.add(k);
      }
    }
    kept.sort((a, b) -> score[a] == score[b] ? a - b : Double.compare(score[b], score[a]));
    kept = kept.subList(0, Math.min(most, kept.size()));
    return new Places(
        kept.stream().mapToInt(k -> k).toArray(),
        kept.stream().mapToDouble(k -> score[k] + gain).toArray(),
        kept.stream().mapToInt(k -> fromOnset[k]).toArray(),
        kept.stream().mapToInt(k -> fromPlace[k]).toArray());
  }
}
