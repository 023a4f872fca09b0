package org.matraloom.follow;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.matraloom.onset.SoundLevels;

/**
 * Whether sounds that are taken for the same sollu are alike.
 *
 * <p>The colour of each sound just after its onset is compared: the variance between the sollus by
 * the variance within them, as in an analysis of variance (R. A. Fisher, Statistical Methods for
 * Research Workers, 1925), summed over all bands. Were the sollus put to the sounds by chance, it
 * would be about 1; where the words are right it is several times that, whoever speaks.
 */
public final class SolluLikeness {

  /** What is said of too few sounds. */
  public static final double UNKNOWN = 1;

  private static final int LEAST_ALIKE = 3;

  private SolluLikeness() {}

  /**
   * The ratio.
   *
   * @param alignment which sound is taken for which sollu
   * @param levels the recording
   * @return about 1 for wrong words, more for right ones; 1 if there is too little to compare
   */
  public static double of(Alignment alignment, SoundLevels levels) {
    Map<Integer, List<double[]>> sollus = new TreeMap<>();
    Map<Integer, List<double[]>> inTurn = new TreeMap<>();
    int[] kinds = ExpectedSollu.kinds(alignment.expected());
    int[] turns = SoundEvidence.inTurn(kinds.length);
    for (Alignment.Said said : alignment.said()) {
      double[] colour = levels.colour(alignment.secondsOf(said));
      sollus.computeIfAbsent(kinds[said.sollu()], kind -> new ArrayList<>()).add(colour);
      inTurn.computeIfAbsent(turns[said.sollu()], kind -> new ArrayList<>()).add(colour);
    }
    return Math.max(ratio(often(sollus)), ratio(often(inTurn)));
  }

  private static List<List<double[]>> often(Map<Integer, List<double[]>> colours) {
    return colours.values().stream().filter(alike -> alike.size() >= LEAST_ALIKE).toList();
  }

  /** Variance between groups by variance within, summed over the dimensions; 1 if not known. */
  static double ratio(List<List<double[]>> groups) {
    int count = groups.stream().mapToInt(List::size).sum();
    if (groups.size() < 2 || count <= groups.size()) {
      return UNKNOWN;
    }
    int dimensions = groups.get(0).get(0).length;
    double between = 0;
    double within = 0;
    for (int d = 0; d < dimensions; d++) {
      int at = d;
      double all =
          groups.stream().flatMap(List::stream).mapToDouble(c -> c[at]).average().orElse(0);
      for (List<double[]> group : groups) {
        double mean = group.stream().mapToDouble(c -> c[at]).average().orElse(0);
        between += group.size() * (mean - all) * (mean - all);
        within += group.stream().mapToDouble(c -> (c[at] - mean) * (c[at] - mean)).sum();
      }
    }
    double perGroup = between / (groups.size() - 1);
    double perSound = within / (count - groups.size());
    return perSound > 0 ? perGroup / perSound : 1;
  }
}
