package org.matraloom.follow;

import java.util.List;

/**
 * When each sollu falls if the score is said as written, or with one of the * habits of changing
 * the nadai, so that a take that has them can still be followed.
 */
public final class HabitLayouts {

  /** Where the fifth matra ends up when the first four have taken the beat. */
  private static final double SQUEEZED = 0.91;

  private HabitLayouts() {}

  /**
   * All ways.
   *
   * @param expected the sollus of the score
   * @return seconds from the first sollu at the tempo of the score, for each way; the first is as
   *     written
   */
  static double[][] of(List<ExpectedSollu> expected) {
    int count = expected.size();
    double[] written = expected.stream().mapToDouble(ExpectedSollu::seconds).toArray();
    if (expected.stream().mapToInt(ExpectedSollu::matrasPerBeat).distinct().count() < 2) {
      return new double[][] {written};
    }
    double[][] ways = {
      written, new double[count], new double[count], new double[count], new double[count]
    };
    double perBeat = secondsPerBeat(expected);
    int old = expected.get(0).matrasPerBeat();
    for (int k = 0; k < count; k++) {
      ExpectedSollu asked = expected.get(k);
      int nadai = asked.matrasPerBeat();
      if (k > 0) {
        int before = expected.get(k - 1).matrasPerBeat();
        old = before == nadai ? old : before;
        double step = written[k] - written[k - 1];
        ways[1][k] = ways[1][k - 1] + (before == nadai && old != nadai ? step * nadai / old : step);
      }
      int matra = asked.matra() - 1;
      double start = written[k] - matra * perBeat / nadai;
      boolean whole = matra >= 0 && nadai >= 5;
      ways[2][k] = whole && old == nadai - 1 ? start + perBeat * squeezed(matra, old) : written[k];
      ways[3][k] = whole && nadai == 5 ? start + perBeat * limping(matra) : written[k];
      ways[4][k] = whole ? start + perBeat * rushed(matra, nadai) : written[k];
    }
    return ways;
  }

  /**
   * The old speed as long as there is room in the beat; what is left over comes at its very end.
   *
   * @param matra which matra of the beat, from 0
   * @param old matras a beat before the change
   * @return where it falls, in beats from the beginning of its beat
   */
  public static double squeezed(int matra, int old) {
    return Math.min(matra / (double) old, SQUEEZED);
  }

  /**
   * Two quarters of a beat, then three sixths.
   *
   * @param matra which matra of the beat, from 0 to 4
   * @return where it falls, in beats from the beginning of its beat
   */
  public static double limping(int matra) {
    return matra <= 2 ? matra / 4.0 : 0.5 + (matra - 2) / 6.0;
  }

  /**
   * As if the beat held one matra more.
   *
   * @param matra which matra of the beat, from 0
   * @param nadai matras a beat
   * @return where it falls, in beats from the beginning of its beat
   */
  public static double rushed(int matra, int nadai) {
    return matra / (nadai + 1.0);
  }

  private static double secondsPerBeat(List<ExpectedSollu> expected) {
    ExpectedSollu first = expected.get(0);
    ExpectedSollu last = expected.get(expected.size() - 1);
    return last.seconds() / last.beat().minus(first.beat()).toDouble();
  }
}
