package org.matraloom.measure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseLine;
import org.matraloom.pulse.RobustStatistics;

/**
 * How even the matras of a beat are, apart from the sollus that fall on them: where a matra is
 * always said with the same sollu, it cannot be told whether the one or the other is late, and
 * nothing is said of it.
 *
 * <p>Deviations are taken apart by median polish (J. W. Tukey, Exploratory Data Analysis, 1977,
 * chapter 11), the sollu first.
 */
public final class MatraEvenness {

  private static final int SWEEPS = 6;

  /** So many different sollus fall on a matra of which something can be said. */
  private static final int LEAST_SOUNDS = 2;

  private MatraEvenness() {}

  private record Cell(int nadai, int matra) {}

  /**
   * Mean and spread for each nadai and matra of which something can be said.
   *
   * @param expected the sollus of the score
   * @param sollus what was said
   * @param line the pulse
   * @return one for each nadai and matra, in their order
   */
  public static List<Evenness> of(
      List<ExpectedSollu> expected, List<SaidSollu> sollus, PulseLine line) {
    List<Cell> cells = new ArrayList<>();
    List<String> sounds = new ArrayList<>();
    List<Double> late = new ArrayList<>();
    for (SaidSollu said : sollus) {
      ExpectedSollu asked = expected.get(said.place());
      double beat = line.beatSeconds(asked.beat().toDouble());
      if (asked.matra() > 0 && Math.abs(said.deviationSeconds()) < beat / 2) {
        cells.add(new Cell(asked.matrasPerBeat(), asked.matra()));
        sounds.add(asked.sollu().sound());
        late.add(said.deviationSeconds());
      }
    }
    double[] rest = late.stream().mapToDouble(Double::doubleValue).toArray();
    double[] ofMatra = new double[rest.length];
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      polish(rest, sounds, new double[rest.length]);
      polish(rest, cells, ofMatra);
    }
    Map<Cell, Set<String>> soundsOf = new HashMap<>();
    Map<Cell, List<Integer>> members = new HashMap<>();
    for (int i = 0; i < rest.length; i++) {
      soundsOf.computeIfAbsent(cells.get(i), c -> new HashSet<>()).add(sounds.get(i));
      members.computeIfAbsent(cells.get(i), c -> new ArrayList<>()).add(i);
    }
    Map<Integer, Evenness> found = new TreeMap<>();
    members.forEach(
        (cell, own) -> {
          if (soundsOf.get(cell).size() >= LEAST_SOUNDS) {
            double[] values = own.stream().mapToDouble(i -> ofMatra[i] + rest[i]).toArray();
            found.put(
                cell.nadai * 1_000 + cell.matra,
                new Evenness(
                    cell.nadai,
                    cell.matra,
                    RobustStatistics.median(values),
                    RobustStatistics.spread(values),
                    values.length));
          }
        });
    return List.copyOf(found.values());
  }

  /** Takes the median of each group off its members, and adds it up. */
  private static <T> void polish(double[] rest, List<T> groups, double[] taken) {
    Map<T, List<Integer>> members = new HashMap<>();
    for (int i = 0; i < rest.length; i++) {
      members.computeIfAbsent(groups.get(i), g -> new ArrayList<>()).add(i);
    }
    for (List<Integer> own : members.values()) {
      double median = RobustStatistics.median(own.stream().mapToDouble(i -> rest[i]).toArray());
      for (int i : own) {
        rest[i] -= median;
        taken[i] += median;
      }
    }
  }
}
