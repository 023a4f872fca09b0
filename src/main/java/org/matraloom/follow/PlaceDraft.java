package org.matraloom.follow;

import java.util.Arrays;

/** Gathers, for one onset, the best way to each place of the score; keeps the likeliest places. */
final class PlaceDraft {

  /**
   * Where in the score the performer may be at one onset, and how they got there.
   *
   * @param sollu the places, ascending
   * @param score how likely each is
   * @param fromOnset the onset of the sollu before
   * @param fromPlace which of that onset's places it was
   * @param lateSeconds how much later than the pulse the onset is
   * @param rate how much slower than usual the pulse is there
   */
  record Places(
      int[] sollu,
      double[] score,
      int[] fromOnset,
      int[] fromPlace,
      double[] lateSeconds,
      double[] rate) {}

  /** A place that is worse than the best by this much is given up: more than a restart. */
  private static final double HOPELESS = 12;

  private final double[] score;
  private final int[] fromOnset;
  private final int[] fromPlace;
  private final double[] lateSeconds;
  private final double[] rate;
  private final int[] offered;
  private int count;
  private double most;

  PlaceDraft(int sollus) {
    score = new double[sollus];
    fromOnset = new int[sollus];
    fromPlace = new int[sollus];
    lateSeconds = new double[sollus];
    rate = new double[sollus];
    offered = new int[sollus];
    Arrays.fill(score, Double.NEGATIVE_INFINITY);
  }

  void clear() {
    for (int i = 0; i < count; i++) {
      score[offered[i]] = Double.NEGATIVE_INFINITY;
    }
    count = 0;
    most = Double.NEGATIVE_INFINITY;
  }

  /** Whether no place of such a score would be kept. */
  boolean isHopeless(double value) {
    return value < most - HOPELESS;
  }

  /** Whether a place could get this score. */
  boolean wants(int sollu, double value) {
    return value > score[sollu];
  }

  /** Offers a way to a place from which a pulse begins. */
  void offer(int sollu, double value, int onset, int place) {
    offer(sollu, value, onset, place, 0, 1);
  }

  void offer(int sollu, double value, int onset, int place, double late, double slower) {
    if (value > score[sollu]) {
      if (score[sollu] == Double.NEGATIVE_INFINITY) {
        offered[count++] = sollu;
      }
      score[sollu] = value;
      most = Math.max(most, value);
      fromOnset[sollu] = onset;
      fromPlace[sollu] = place;
      lateSeconds[sollu] = late;
      rate[sollu] = slower;
    }
  }

  /** Adds to the score of every place what its sollu and this onset say for one another. */
  void add(java.util.function.IntToDoubleFunction gain) {
    for (int i = 0; i < count; i++) {
      score[offered[i]] += gain.applyAsDouble(offered[i]);
    }
  }

  /**
   * The likeliest places, in order of the score; of equally likely ones the earlier.
   *
   * @param most no more than so many
   */
  Places best(int most) {
    int[] likely = likely();
    if (likely.length <= most) {
      return places(likely);
    }
    double[] scores = new double[likely.length];
    for (int i = 0; i < scores.length; i++) {
      scores[i] = score[likely[i]];
    }
    Arrays.sort(scores);
    double least = scores[scores.length - most];
    int room = most;
    for (int sollu : likely) {
      room -= score[sollu] > least ? 1 : 0;
    }
    int[] kept = new int[most];
    int taken = 0;
    for (int sollu : likely) {
      if (score[sollu] > least || (score[sollu] == least && room-- > 0)) {
        kept[taken++] = sollu;
      }
    }
    return places(kept);
  }

  /** The places that are not hopeless, in order of the score. */
  private int[] likely() {
    double top = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      top = Math.max(top, score[offered[i]]);
    }
    int[] likely = new int[count];
    int found = 0;
    for (int i = 0; i < count; i++) {
      if (score[offered[i]] >= top - HOPELESS) {
        likely[found++] = offered[i];
      }
    }
    Arrays.sort(likely, 0, found);
    return Arrays.copyOf(likely, found);
  }

  private Places places(int[] kept) {
    int size = kept.length;
    Places places =
        new Places(
            kept,
            new double[size],
            new int[size],
            new int[size],
            new double[size],
            new double[size]);
    for (int i = 0; i < size; i++) {
      int k = kept[i];
      places.score[i] = score[k];
      places.fromOnset[i] = fromOnset[k];
      places.fromPlace[i] = fromPlace[k];
      places.lateSeconds[i] = lateSeconds[k];
      places.rate[i] = rate[k];
    }
    return places;
  }
}
