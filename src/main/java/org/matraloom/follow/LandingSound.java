package org.matraloom.follow;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;
import org.matraloom.pulse.RobustStatistics;

/**
 * Gives the last sollu of a finished pairing that of the sounds around its place that it is most
 * likely to be. No sollu after it helps to choose, and what is known of how the sollus sound was
 * learnt from the whole pairing only.
 */
final class LandingSound {

  /** A sound is nearer to its sollu's place than to the next, in matras. */
  private static final double NEAR_MATRAS = 0.42;

  /** The place of the last sollu is told by so many before it. */
  private static final int BEFORE = 8;

  /** Another sound is taken if it is so much likelier, in logarithms. */
  private static final double LIKELIER = 1.5;

  /** No sound is farther than this costs. */
  private static final double MOST_COST = 2;

  private final double[] expected;
  private final double[] matraSeconds;
  private final List<Onset> onsets;
  private final PairingModel model;

  /**
   * Prepares to look.
   *
   * @param expected when each sollu falls, in seconds at the tempo of the score
   * @param matraSeconds the length of each sollu's matra at that tempo
   * @param onsets what was heard
   * @param model what is known of the performer
   */
  LandingSound(double[] expected, double[] matraSeconds, List<Onset> onsets, PairingModel model) {
    this.expected = expected;
    this.matraSeconds = matraSeconds;
    this.onsets = onsets;
    this.model = model;
  }

  /**
   * The same sollus, the last with the likeliest sound around its place.
   *
   * @param said the pairs, in order of time
   */
  List<Alignment.Said> likeliest(List<Alignment.Said> said) {
    int last = said.size() - 1;
    if (last <= BEFORE || said.get(last).sollu() != expected.length - 1) {
      return said;
    }
    List<Alignment.Said> before = said.subList(last - BEFORE, last);
    double place = place(before);
    double near = NEAR_MATRAS * matraSeconds[expected.length - 1] * model.stretch();
    int now = said.get(last).onset();
    int best =
        IntStream.range(before.get(BEFORE - 1).onset() + 1, onsets.size())
            .filter(j -> Math.abs(felt(expected.length - 1, j) - place) < near)
            .filter(j -> worth(j, place) > worth(now, place) + LIKELIER)
            .reduce(now, (a, b) -> worth(b, place) > worth(a, place) ? b : a);
    List<Alignment.Said> found = new ArrayList<>(said.subList(0, last));
    found.add(new Alignment.Said(expected.length - 1, best));
    return found;
  }

  /** Where the last sollu falls by those before it at their own speed, in seconds. */
  private double place(List<Alignment.Said> before) {
    int half = BEFORE / 2;
    double[] slopes =
        IntStream.range(0, half)
            .mapToDouble(
                i ->
                    (felt(before.get(i + half)) - felt(before.get(i)))
                        / (expected[before.get(i + half).sollu()]
                            - expected[before.get(i).sollu()]))
            .toArray();
    double stretch = RobustStatistics.median(slopes);
    return RobustStatistics.median(
        before.stream()
            .mapToDouble(
                each ->
                    felt(each) + (expected[expected.length - 1] - expected[each.sollu()]) * stretch)
            .toArray());
  }

  private double felt(Alignment.Said said) {
    return felt(said.sollu(), said.onset());
  }

  private double felt(int sollu, int onset) {
    return onsets.get(onset).seconds() + model.lagSeconds()[sollu];
  }

  private double worth(int onset, double place) {
    int last = expected.length - 1;
    double off = (felt(last, onset) - place) / model.spreadSeconds();
    return PairingPrices.pair(onsets.get(onset))
        + model.sollus().gain(last, onset)
        - Math.min(MOST_COST, off * off / 2);
  }
}
