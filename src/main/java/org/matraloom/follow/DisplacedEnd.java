package org.matraloom.follow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;

/**
 * Finds the last sollu where it was said early or late. No pulse follows it that would carry such a
 * pair, so that it costs as much as a sollu that was not said beside a sound left over; but people
 * seldom leave out the sollu that they are heading for.
 */
final class DisplacedEnd {

  /** The sound is no farther from the place of the last sollu, in matras. */
  private static final double FARTHEST_MATRAS = 0.95;

  /** Nor is it nearer to the sollu before than this. */
  private static final double LEAST_MATRAS = 0.3;

  /** What speaks more against a sound is said of something else. */
  private static final double UNLIKE = -1;

  private DisplacedEnd() {}

  /**
   * The pairing with its last sollu, if only that is missing at the end and a sound is left over
   * near its place.
   *
   * @param said the pairs, in order of time
   * @param expected when each sollu falls, in seconds at the tempo of the score
   * @param matraSeconds the length of each sollu's matra at that tempo
   * @param onsets what was heard
   * @param model what is known of the performer
   */
  static List<Alignment.Said> found(
      List<Alignment.Said> said,
      double[] expected,
      double[] matraSeconds,
      List<Onset> onsets,
      PairingModel model) {
    int last = expected.length - 1;
    if (said.size() < 2 || said.get(said.size() - 1).sollu() != last - 1) {
      return said;
    }
    Alignment.Said before = said.get(said.size() - 1);
    double matra = matraSeconds[last] * model.stretch();
    double asked = (expected[last] - expected[before.sollu()]) * model.stretch();
    double from = felt(onsets, model, before);
    Optional<Alignment.Said> end =
        IntStream.range(before.onset() + 1, onsets.size())
            .mapToObj(j -> new Alignment.Said(last, j))
            .filter(each -> felt(onsets, model, each) - from > LEAST_MATRAS * matra)
            .filter(
                each ->
                    Math.abs(felt(onsets, model, each) - from - asked) < FARTHEST_MATRAS * matra)
            .filter(each -> model.sollus().gain(last, each.onset()) > UNLIKE)
            .min(
                Comparator.comparingDouble(
                    each -> Math.abs(felt(onsets, model, each) - from - asked)));
    List<Alignment.Said> whole = new ArrayList<>(said);
    end.ifPresent(whole::add);
    return whole;
  }

  private static double felt(List<Onset> onsets, PairingModel model, Alignment.Said said) {
    return onsets.get(said.onset()).seconds() + model.lagSeconds()[said.sollu()];
  }
}
