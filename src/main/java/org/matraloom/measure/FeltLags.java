package org.matraloom.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.FeltBeat;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.RobustStatistics;

/**
 * Learns from a take how long after the release its performer's beat is felt, class by class.
 *
 * <p>Deviations are taken apart into what comes of the consonant and what comes of the place in the
 * beat by median polish (J. W. Tukey, Exploratory Data Analysis, 1977, chapter 11), so that a late
 * matra does not count as a slow consonant where both are heard apart. How much the usual lags
 * count beside that is a matter of {@link FeltBeat}.
 */
final class FeltLags {

  private static final int SWEEPS = 6;

  /** What is farther from the pulse says nothing about a consonant. */
  private static final double FARTHEST_SECONDS = 0.080;

  private FeltLags() {}

  /**
   * The lags of a take.
   *
   * @param expected the sollus of the score
   * @param kinds the class of each
   * @param said what was heard, its deviations measured with the usual lags
   * @return seconds for each class
   */
  static double[] of(List<ExpectedSollu> expected, List<FeltBeat> kinds, List<SaidSollu> said) {
    List<SaidSollu> near =
        said.stream().filter(s -> Math.abs(s.deviationSeconds()) < FARTHEST_SECONDS).toList();
    int classes = FeltBeat.values().length;
    double[] late = new double[near.size()];
    int[] kind = new int[near.size()];
    int[] cell = new int[near.size()];
    Map<String, Integer> cells = new TreeMap<>();
    for (int i = 0; i < late.length; i++) {
      SaidSollu sollu = near.get(i);
      ExpectedSollu asked = expected.get(sollu.place());
      late[i] = sollu.deviationSeconds();
      kind[i] = kinds.get(sollu.place()).ordinal();
      String key = asked.round() + "/" + asked.matrasPerBeat() + "/" + asked.matra();
      Integer known = cells.putIfAbsent(key, cells.size());
      cell[i] = known == null ? cells.size() - 1 : known;
    }
    double[] ofKind = new double[classes];
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      add(ofKind, take(late, kind, classes));
      take(late, cell, cells.size());
    }
    return shrunk(ofKind, kind);
  }

  /** Takes the median of each group off its members. */
  private static double[] take(double[] late, int[] group, int groups) {
    double[] medians = new double[groups];
    for (int g = 0; g < groups; g++) {
      int which = g;
      medians[g] =
          RobustStatistics.median(
              java.util.stream.IntStream.range(0, late.length)
                  .filter(i -> group[i] == which)
                  .mapToDouble(i -> late[i])
                  .toArray());
    }
    for (int i = 0; i < late.length; i++) {
      late[i] -= medians[group[i]];
    }
    return medians;
  }

  private static void add(double[] sum, double[] more) {
    for (int i = 0; i < sum.length; i++) {
      sum[i] += more[i];
    }
  }

  private static double[] shrunk(double[] ofKind, int[] kind) {
    double middle =
        RobustStatistics.median(Arrays.stream(kind).mapToDouble(k -> ofKind[k]).toArray());
    double[] lags = FeltBeat.usualLags();
    for (FeltBeat felt : FeltBeat.values()) {
      int k = felt.ordinal();
      long count = Arrays.stream(kind).filter(each -> each == k).count();
      lags[k] = felt.lagSeconds(middle - ofKind[k], count);
    }
    return lags;
  }
}
