package org.matraloom.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseLine;

/** Measures how evenly the matras of a beat are said: {@link Evenness}. */
final class EvennessMeasure {

  private EvennessMeasure() {}

  /**
   * Mean and spread for each nadai and place in the beat, over the whole take.
   *
   * <p>Sollus that fall between matras, and those farther from the pulse than half a beat, are not
   * counted.
   *
   * @param expected the sollus of the score
   * @param sollus what was said
   * @param line the pulse
   * @return by nadai and place, ascending
   */
  static List<Evenness> of(List<ExpectedSollu> expected, List<SaidSollu> sollus, PulseLine line) {
    Map<Integer, Map<Integer, List<Double>>> late = new TreeMap<>();
    for (SaidSollu said : sollus) {
      ExpectedSollu asked = expected.get(said.place());
      double beat = line.beatSeconds(asked.beat().toDouble());
      if (asked.matra() > 0 && Math.abs(said.deviationSeconds()) < beat / 2) {
        late.computeIfAbsent(asked.matrasPerBeat(), nadai -> new TreeMap<>())
            .computeIfAbsent(asked.matra(), matra -> new ArrayList<>())
            .add(said.deviationSeconds());
      }
    }
    List<Evenness> found = new ArrayList<>();
    late.forEach(
        (nadai, byMatra) ->
            byMatra.forEach((matra, values) -> found.add(evenness(nadai, matra, values))));
    return found;
  }

  private static Evenness evenness(int nadai, int matra, List<Double> values) {
    double[] late = values.stream().mapToDouble(Double::doubleValue).toArray();
    double mean = Arrays.stream(late).average().orElse(0);
    double squares = Arrays.stream(late).map(v -> (v - mean) * (v - mean)).sum();
    double spread = late.length < 2 ? 0 : Math.sqrt(squares / (late.length - 1));
    return new Evenness(nadai, matra, mean, spread, late.length);
  }
}
