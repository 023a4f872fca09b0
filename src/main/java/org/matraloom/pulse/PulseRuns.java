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

  /** At the ends of a take fewer are enough. */
  private static final int AGREEING_AT_END = 3;

  /**
   * A sollu that was left out may have been given a sound between two others; then so many lie on
   * the way from the one pulse to the other, and each of them is off by this much.
   */
  private static final int MOST_ON_THE_WAY = 3;

  /** One uneven interval is no slip: what follows it is later or earlier by so much as a whole. */
  private static final double LEAST_LASTING = 0.45;

  /** Where two or three stand apart, so much of it is at the step; the rest is unevenness. */
  private static final double LEAST_STEP = 0.3;

  /** A first sollu is a run of its own if it is off by so much. */
  private static final double LEAST_APART = 0.65;

  private static final double BEGUN_MATRAS = 0.15;
  private static final double LEAST_ON_THE_WAY = 0.7;
  private static final double DISAGREE_ON_THE_WAY = 0.25;

  /** Or each of them is off what follows by so much of a matra, which no unevenness does. */
  private static final double LEAST_ALL_APART = 0.8;

  /** And what follows keeps one pulse to so much of a matra. */
  private static final double EVEN_AFTER = 0.25;

  /** The few sollus before an early slip are so even, in matras. */
  private static final double EVEN_BEGIN = 0.05;

  /** How far the sollus may disagree with the interval that holds the slip, in matras. */
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
      } else if (i >= begin + (begin == 0 ? AGREEING_AT_END : AGREEING)
              && slips(i, place, asked, matra, heard, pace)
          || begin == 0 && standsApart(i, place, asked, matra, heard, pace)) {
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

  /**
   * Whether the one to three sollus before one stand apart from all that follows: the take slipped
   * as soon as it had begun. So few do not tell where they would be, so more is asked.
   */
  private static boolean standsApart(
      int i, int[] place, double[] asked, double[] matra, double[] heard, double pace) {
    int to = i + AGREEING;
    if (i == 0
        || i > AGREEING_AT_END
        || matra[i] <= 0
        || to > place.length
        || place[to - 1] < place[i]) {
      return false;
    }
    double unit = matra[i] * pace;
    double after = median(i, to, asked, heard, pace);
    double apart = (after - median(0, i, asked, heard, pace)) / unit;
    double side = Math.signum(apart);
    return Math.abs(apart) >= (i == 1 ? LEAST_APART : LEAST_MATRAS)
        && side * step(i, i, asked, heard, pace) >= (i == 1 ? LEAST_MATRAS : LEAST_STEP) * unit
        && IntStream.range(0, i)
            .allMatch(k -> side * (after - heard[k] + asked[k] * pace) >= LEAST_MATRAS * unit);
  }

  /** Whether all is later or earlier from a sollu on, at once or over the next few. */
  private static boolean slips(
      int i, int[] place, double[] asked, double[] matra, double[] heard, double pace) {
    if (matra[i] <= 0) {
      return false;
    }
    double unit = matra[i] * pace;
    double before = median(Math.max(0, i - AGREEING), i, asked, heard, pace);
    double begun = step(i, i, asked, heard, pace) / unit;
    for (int on = 0; on <= MOST_ON_THE_WAY; on++) {
      int from = i + on;
      int to = Math.min(from + AGREEING, place.length);
      if (to < from + (on == 0 ? AGREEING_AT_END : AGREEING) || place[to - 1] < place[i]) {
        return false;
      }
      double step = step(i, from, asked, heard, pace) / unit;
      double after = median(from, to, asked, heard, pace);
      boolean isStep =
          on == 0
              ? Math.abs(step) >= LEAST_MATRAS
              : Math.abs(step) >= LEAST_ON_THE_WAY
                  && begun * Math.signum(step) >= BEGUN_MATRAS
                  && IntStream.range(i, from)
                      .mapToDouble(k -> (heard[k] - asked[k] * pace - before) / unit)
                      .allMatch(off -> off * Math.signum(step) >= BEGUN_MATRAS)
                  && (i >= AGREEING
                      || isEven(0, i, asked, heard, pace, EVEN_BEGIN * unit)
                      || areApart(i, after, Math.signum(step) * unit, asked, heard, pace)
                          && isEven(from, to, asked, heard, pace, EVEN_AFTER * unit));
      if (isStep
          && Math.abs(after - before) >= LEAST_LASTING * unit
          && Math.abs((after - before) / unit - step)
              < (on == 0 ? DISAGREE : DISAGREE_ON_THE_WAY)) {
        return true;
      }
    }
    return false;
  }

  /** Whether all from one sollu to before another keep one pulse to so many seconds. */
  private static boolean isEven(
      int from, int to, double[] asked, double[] heard, double pace, double seconds) {
    double middle = median(from, to, asked, heard, pace);
    return IntStream.range(from, to)
        .allMatch(k -> Math.abs(heard[k] - asked[k] * pace - middle) <= seconds);
  }

  /** Whether each before a sollu is most of a slip from what follows: no chance, however uneven. */
  private static boolean areApart(
      int i, double after, double slip, double[] asked, double[] heard, double pace) {
    return IntStream.range(0, i)
        .allMatch(k -> (after - heard[k] + asked[k] * pace) / slip >= LEAST_ALL_APART);
  }

  /** How much longer it took from before one sollu to another than the pace asks. */
  private static double step(int i, int to, double[] asked, double[] heard, double pace) {
    return heard[to] - heard[i - 1] - (asked[to] - asked[i - 1]) * pace;
  }

  private static double median(int from, int to, double[] asked, double[] heard, double pace) {
    return RobustStatistics.median(
        IntStream.range(from, to).mapToDouble(i -> heard[i] - asked[i] * pace).toArray());
  }
}
