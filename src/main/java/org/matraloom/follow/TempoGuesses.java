package org.matraloom.follow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;

/**
 * How much slower than its score a take may be, guessed from how often each span of time lies
 * between two of its sounds: on a scale of logarithms a slower take has the histogram of its score,
 * moved (as tempo induction goes by inter-onset intervals: S. Dixon, J. New Music Res. 30 (2001)
 * 39-58). No order, no beginning and no pairing is needed.
 */
final class TempoGuesses {

  private static final double SHORTEST_SECONDS = 0.05;
  private static final double LONGEST_SECONDS = 1.6;

  /** A bin of the histograms, as a logarithm. */
  private static final double BIN = 0.01;

  /** A span of time varies by so much. */
  private static final double SPREAD_SECONDS = 0.022;

  private static final double LEAST_SPREAD = 0.012;

  /** No span is farther from its middle than so many spreads. */
  private static final double REACH = 2.5;

  private static final double SILENCE = 1e-9;

  /** What is common to all takes is as wide as this. */
  private static final double COMMON = 0.30;

  /** Takes so much slower or faster than their score are seldom. */
  private static final double USUAL = 0.5;

  /** What is less likely than this share of the likeliest is no guess. */
  private static final double WORTH_A_GUESS = 0.4;

  /** Guesses are this far apart. */
  private static final double APART = 0.045;

  private TempoGuesses() {}

  /**
   * The likeliest, each a maximum of its own.
   *
   * @param expected when each sollu falls, in seconds at the tempo of the score
   * @param onsets what was heard
   * @param least the take may be so many times as slow as the score at least
   * @param most the same at most
   * @param count so many guesses at most
   * @return how many times as slow the take may be, the likeliest first; 1 alone if nothing speaks
   *     for any
   */
  static List<Double> of(
      double[] expected, List<Onset> onsets, double least, double most, int count) {
    double[] ones = new double[expected.length];
    Arrays.fill(ones, 1);
    int below = (int) Math.ceil(StrictMath.log(most) / BIN);
    int above = (int) Math.ceil(-StrictMath.log(least) / BIN);
    double[] asked = histogram(expected, ones, below, above);
    double[] heard =
        histogram(
            onsets.stream().mapToDouble(Onset::seconds).toArray(),
            onsets.stream().mapToDouble(Onset::confidence).toArray(),
            0,
            0);
    double[] like = new double[above + below + 1];
    for (int i = 0; i < like.length; i++) {
      int shift = i - above;
      double sum = 0;
      double power = SILENCE;
      double powerHeard = SILENCE;
      for (int b = 0; b < heard.length; b++) {
        double of = asked[b - shift + below];
        sum += heard[b] * of;
        power += of * of;
        powerHeard += heard[b] * heard[b];
      }
      double off = shift * BIN / USUAL;
      like[i] = sum / Math.sqrt(power * powerHeard) - off * off;
    }
    return maxima(like, above, count);
  }

  private static List<Double> maxima(double[] like, int middle, int count) {
    List<Integer> order =
        IntStream.range(0, like.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -like[i]))
            .toList();
    List<Double> guesses = new ArrayList<>();
    for (int i : order) {
      double guess = StrictMath.exp((i - middle) * BIN);
      boolean peak =
          (i == 0 || like[i - 1] <= like[i]) && (i == like.length - 1 || like[i + 1] <= like[i]);
      boolean likely = guesses.isEmpty() || like[i] > WORTH_A_GUESS * like[order.get(0)];
      if (peak
          && likely
          && guesses.stream().noneMatch(other -> Math.abs(StrictMath.log(other / guess)) < APART)) {
        guesses.add(guess);
      }
      if (guesses.size() == count) {
        break;
      }
    }
    return guesses.isEmpty() ? List.of(1.0) : guesses;
  }

  /** From the shortest span to the longest, with some bins more below and above. */
  private static double[] histogram(double[] at, double[] weight, int below, int above) {
    int bins = (int) Math.ceil(StrictMath.log(LONGEST_SECONDS / SHORTEST_SECONDS) / BIN);
    double[] sums = new double[below + bins + above];
    double shortest = StrictMath.log(SHORTEST_SECONDS) - below * BIN;
    double longest = LONGEST_SECONDS * StrictMath.exp(above * BIN);
    for (int i = 0; i < at.length; i++) {
      for (int j = i + 1; j < at.length && at[j] - at[i] < longest; j++) {
        double span = at[j] - at[i];
        if (StrictMath.log(span) >= shortest) {
          double middle = (StrictMath.log(span) - shortest) / BIN;
          add(sums, middle, span, weight[i] * weight[j] / span);
        }
      }
    }
    return withoutCommon(sums);
  }

  private static void add(double[] sums, double middle, double span, double weight) {
    double spread = Math.max(LEAST_SPREAD, SPREAD_SECONDS / span) / BIN;
    int from = (int) Math.max(0, Math.floor(middle - REACH * spread));
    int to = (int) Math.min(sums.length - 1, Math.ceil(middle + REACH * spread));
    for (int b = from; b <= to; b++) {
      double off = (b - middle) / spread;
      sums[b] += weight / spread * StrictMath.exp(-off * off / 2);
    }
  }

  private static double[] withoutCommon(double[] sums) {
    int reach = (int) Math.round(COMMON / BIN);
    double[] upTo = new double[sums.length + 1];
    for (int b = 0; b < sums.length; b++) {
      upTo[b + 1] = upTo[b] + sums[b];
    }
    double[] left = new double[sums.length];
    for (int b = 0; b < sums.length; b++) {
      int lo = Math.max(0, b - reach);
      int hi = Math.min(sums.length, b + reach + 1);
      left[b] = sums[b] - (upTo[hi] - upTo[lo]) / (hi - lo);
    }
    return left;
  }
}
