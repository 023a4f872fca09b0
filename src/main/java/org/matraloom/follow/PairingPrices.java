package org.matraloom.follow;

import java.util.List;
import org.matraloom.onset.Onset;

/**
 * What a pair of a sollu and an onset is worth, and what it costs to leave one without the other:
 * in the order of the logarithms of how often each happens.
 */
final class PairingPrices {

  /** Between two pairs at most so many sollus are missing. */
  static final int MOST_MISSED = 16;

  /** No more are missing where the performer waits. */
  static final int MOST_MISSED_IN_WAIT = 2;

  /**
   * At most so many of the first or of the last sollus may be missing, or it is a part of a take.
   */
  static final int MOST_MISSED_AT_END = 5;

  static final double RESTART = 6;

  /** Going back without a pause is far less likely. */
  static final double REPEAT = 11;

  static final double RESTART_SECONDS = 0.6;
  static final double REPEAT_SECONDS = 0.05;

  /** The recording may begin with an entry, less likely anywhere; both rather than go on there. */
  static final double LATE = 7;

  static final double ANYWHERE = 8;
  static final int ANYWHERE_ONSETS = 16;

  private static final double PAIR = 1.0;
  private static final double SURE = 0.5;
  private static final double MISSED = 0.8;
  private static final int MISSED_SINGLY = 5;
  private static final double MISSED_IN_ROW = 0.3;
  private static final double EXTRA = 0.4;

  /** A first or last sollu is missed, or a sound is left over beside one, as seldom as a slip. */
  private static final double AT_END = 3;

  /** What is so sure an onset, and no more matras away than this, belongs to the words. */
  static final double SURE_CONFIDENCE = 0.35;

  private static final double NEXT_MATRAS = 1.6;

  /** What is nearer is of the same sollu: a hum before it, lips that part after it. */
  private static final double SAME_MATRAS = 0.65;

  private final List<Onset> onsets;
  private final int sollus;
  private final double[] extraCost;

  /**
   * Prices for a take.
   *
   * @param onsets what was heard, in order of time
   * @param sollus how many the score asks for
   */
  PairingPrices(List<Onset> onsets, int sollus) {
    this.onsets = onsets;
    this.sollus = sollus;
    extraCost = new double[onsets.size() + 1];
    for (int j = 0; j < onsets.size(); j++) {
      extraCost[j + 1] = extraCost[j] + EXTRA * onsets.get(j).confidence();
    }
  }

  /** What an onset is worth that is a sollu. */
  static double pair(Onset onset) {
    return PAIR + SURE * onset.confidence();
  }

  /** What it costs that so many sollus in a row are missing. */
  static double missed(int count) {
    return MISSED * Math.min(count, MISSED_SINGLY)
        + MISSED_IN_ROW * Math.max(0, count - MISSED_SINGLY);
  }

  /** What it costs that the first or the last sollus are missing. */
  static double missedAtEnd(int count) {
    return count == 0 ? 0 : AT_END + missed(Math.min(count, MOST_MISSED_AT_END));
  }

  /** For each onset what all before it cost if they are no sollus. */
  double[] extraCosts() {
    return extraCost;
  }

  /** What the onsets between two cost that are no sollus. */
  double extra(int from, int to) {
    return extraCost[to] - extraCost[from + 1];
  }

  /** What the onsets before the first sollu cost. */
  double before(int first, double matraSeconds) {
    return extraCost[first] + (isSureBefore(first, matraSeconds) ? AT_END : 0);
  }

  /** Whether a sure sound stands right before the first sollu. */
  boolean isSureBefore(int first, double matraSeconds) {
    double at = onsets.get(first).seconds();
    double from = at - NEXT_MATRAS * matraSeconds;
    boolean isSure = false;
    for (int j = first - 1; j >= 0 && onsets.get(j).seconds() >= from; j--) {
      isSure |=
          onsets.get(j).confidence() >= SURE_CONFIDENCE
              && at - onsets.get(j).seconds() > SAME_MATRAS * matraSeconds;
    }
    return isSure;
  }

  /** What the onsets after the last sollu cost, and the sollus that were not said any more. */
  double after(int last, int count, int unsaid, double matraSeconds) {
    return missedAtEnd(Math.min(unsaid, sollus))
        + (unsaid == 0 ? extraCost[count] - extraCost[last + 1] : 0)
        + (isSureAfter(last, count, matraSeconds) ? AT_END : 0);
  }

  /** Whether a sure sound stands right after the last sollu. */
  boolean isSureAfter(int last, int count, double matraSeconds) {
    double at = onsets.get(last).seconds();
    double to = at + NEXT_MATRAS * matraSeconds;
    boolean isSure = false;
    for (int j = last + 1; j < count && onsets.get(j).seconds() <= to; j++) {
      isSure |=
          onsets.get(j).confidence() >= SURE_CONFIDENCE
              && onsets.get(j).seconds() - at > SAME_MATRAS * matraSeconds;
    }
    return isSure;
  }
}
