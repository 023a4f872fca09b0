package org.matraloom.take;

import java.util.ArrayList;
import java.util.List;

/**
 * What it costs to put a sollu where the pulse of the take, as known so far, does not ask for it.
 */
final class PlacePulse {

  /** No pulse is known: nothing costs. */
  static final PlacePulse NONE = new PlacePulse(new double[0][], 1);

  private static final double MOST_COST = 0.5;

  /** So many runs are looked at. */
  private static final int MOST_RUNS = 12;

  private static final int LEAST_SOLLUS = 8;

  private final double[][] asked;
  private final double farSeconds;

  private PlacePulse(double[][] asked, double farSeconds) {
    this.asked = asked;
    this.farSeconds = farSeconds;
  }

  /**
   * The pulse of a first alignment.
   *
   * @param said which sollu is which onset, in order of time
   * @param expected when each sollu falls in the score
   * @param matras how long the matra of each is; 0 if that is not known
   * @param onsets what was heard
   * @return what can be known of it
   */
  static PlacePulse of(
      List<Alignment.Said> said, double[] expected, double[] matras, List<Onset> onsets) {
    if (said.size() < LEAST_SOLLUS) {
      return NONE;
    }
    double[] at = said.stream().mapToDouble(each -> expected[each.sollu()]).toArray();
    double[] heard =
        said.stream().mapToDouble(each -> onsets.get(each.onset()).seconds()).toArray();
    int[] place = said.stream().mapToInt(Alignment.Said::sollu).toArray();
    double[] matra = said.stream().mapToDouble(each -> matras[each.sollu()]).toArray();
    int[] run = Runs.of(place, at, matra, heard);
    PulseLine line = new PulseFit(at, heard, run).line();
    List<double[]> asked = new ArrayList<>();
    for (int r = 1; r <= Math.min(MOST_RUNS, line.runs()); r++) {
      double[] ofRun = new double[expected.length];
      for (int k = 0; k < ofRun.length; k++) {
        ofRun[k] = line.secondsAt(expected[k], r);
      }
      asked.add(ofRun);
    }
    double usual = 0;
    if (expected.length > 1) {
      double[] steps = new double[expected.length - 1];
      for (int k = 0; k < steps.length; k++) {
        steps[k] = expected[k + 1] - expected[k];
      }
      usual = Robust.median(steps);
    }
    return usual > 0 ? new PlacePulse(asked.toArray(double[][]::new), usual) : NONE;
  }

  /** The cost of a sollu at a moment: the more the farther from the pulse, up to a limit. */
  double cost(int place, double seconds) {
    if (asked.length == 0) {
      return 0;
    }
    double least = 1;
    for (double[] ofRun : asked) {
      double off = (seconds - ofRun[place]) / farSeconds;
      least = Math.min(least, off * off);
    }
    return MOST_COST * least;
  }
}
