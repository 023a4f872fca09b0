package org.matraloom.pulse;

import java.util.stream.IntStream;

/**
 * Cuts a take into runs that keep one pulse: another begins where the performer goes back in the
 * score, and where all that follows is half a matra or more later or earlier than before, because a
 * matra was left out or put in or a breath was waited for.
 */
public final class PulseRuns {

  private static final double LEAST_MATRAS = 0.5;

  /** A slip lasts: so many sollus on either side agree on it. */
  private static final int AGREEING = 6;

  /** How far the sollus may disagree with the one interval that holds the slip, in matras. */
  private static final double DISAGREE = 0.35;

  private PulseRuns() {}

  /**
   * The runs.
   *
   * @param place the place in the score of each sollu, in order of time
   * @param asked where it stands in the score, in any unit of time
   * @param matra the length of its matra in that unit; 0 if it is not known, then nothing slips
   * @param heard when it was said, in seconds
   * @return the run of each, from 1
   */
  public static int[] of(int[] place, double[] asked, double[] matra, double[] heard) {
    int[] run = new int[place.length];
    double pace = pace(place, asked, heard);
    int begin = 0;
    for (int i = 0; i < run.length; i++) {
      run[i] = i == 0 ? 1 : run[i - 1];
      if (i > 0 && place[i] <= place[i - 1]) {
        run[i]++;
        begin = i;
      } else if (i >= begin + AGREEING && slips(i, place, asked, matra, heard, pace)) {
        run[i]++;
        begin = i;
      }
    }
    return run;
  }

  /** Seconds for a unit of the score: the median over neighbours. */
  private static double pace(int[] place, double[] asked, double[] heard) {
    return RobustStatistics.median(
        IntStream.range(1, place.length)
            .filter(i -> asked[i] > asked[i - 1])
            .mapToDouble(i -> (heard[i] - heard[i - 1]) / (asked[i] - asked[i - 1]))
            .toArray());
  }

  private static boolean slips(
      int i, int[] place, double[] asked, double[] matra, double[] heard, double pace) {
    int to = i + AGREEING;
    if (matra[i] <= 0 || to > place.length || place[to - 1] < place[i]) {
      return false;
    }
    double unit = matra[i] * pace;
    double step = (heard[i] - heard[i - 1] - (asked[i] - asked[i - 1]) * pace) / unit;
    if (Math.abs(step) < LEAST_MATRAS) {
      return false;
    }
    double before = median(i - AGREEING, i, asked, heard, pace);
    double after = median(i, to, asked, heard, pace);
    return Math.abs((after - before) / unit - step) < DISAGREE;
  }

  private static double median(int from, int to, double[] asked, double[] heard, double pace) {
    return RobustStatistics.median(
        IntStream.range(from, to).mapToDouble(i -> heard[i] - asked[i] * pace).toArray());
  }
}
