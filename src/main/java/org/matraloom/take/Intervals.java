package org.matraloom.take;

import java.util.Arrays;
import java.util.List;
import org.matraloom.score.Lexicon;

/** How well the time between two onsets fits two sollus of the score. */
final class Intervals {

  /** An interval may be off by this share of its length before it counts. */
  private static final double TOLERANCE = 0.10;

  private static final double LEAST_TOLERANCE_SECONDS = 0.018;
  private static final double MOST_TOLERANCE_SECONDS = 0.12;

  /** Another way than the written one counts as being off by this much. */
  private static final double OTHER_WAY = 0.6;

  /** A difference of lags is uncertain by this share: some put the release itself on the beat. */
  private static final double LAG_DOUBT = 0.5;

  /** A matra or two too many or too few count as being off by this much. */
  private static final double SLIP = 3.2;

  private static final int MOST_SLIPPED = 2;

  /** What is left of an interval is at least this share of a matra. */
  private static final double LEAST_LEFT = 0.9;

  private final double[][] ways;
  private final double[] lagSeconds;
  private final double[] slackSeconds;
  private final double[] matraSeconds;

  private Intervals(
      double[][] ways, double[] lagSeconds, double[] slackSeconds, double[] matraSeconds) {
    this.matraSeconds = matraSeconds;
    this.ways = ways;
    this.lagSeconds = lagSeconds;
    this.slackSeconds = slackSeconds;
  }

  /** Sounds without lags, said as written, in seconds. */
  static Intervals plain(double[] written) {
    return new Intervals(
        new double[][] {written},
        new double[written.length],
        new double[written.length],
        new double[written.length]);
  }

  /**
   * The sollus of a score, each heard as long before its beat as its consonant makes likely.
   *
   * @param expected in order
   * @param lexicon tells the consonants
   */
  static Intervals of(List<ExpectedSollu> expected, Lexicon lexicon) {
    FeltBeat[] kinds =
        expected.stream().map(each -> FeltBeat.of(each.sollu(), lexicon)).toArray(FeltBeat[]::new);
    return new Intervals(
        Ways.of(expected),
        Arrays.stream(kinds).mapToDouble(FeltBeat::middleLagSeconds).toArray(),
        Arrays.stream(kinds).mapToDouble(FeltBeat::slackSeconds).toArray(),
        matras(expected));
  }

  /**
   * By how many tolerances an interval is off, in the way that fits it best.
   *
   * @param from a place in the score
   * @param to a later one
   * @param took the time between their onsets, in seconds
   * @param stretch how many times as slow as the score the take is
   */
  double off(int from, int to, double took, double stretch) {
    double lag = lagSeconds[to] - lagSeconds[from];
    double slack = slackSeconds[from] + slackSeconds[to] + LAG_DOUBT * Math.abs(lag);
    double felt = took + lag;
    double written = ways[0][to] - ways[0][from];
    double least = off(written * stretch, felt, slack);
    for (int w = 1; w < ways.length && least > OTHER_WAY; w++) {
      double other = ways[w][to] - ways[w][from];
      if (other != written) {
        least = Math.min(least, both(OTHER_WAY, off(other * stretch, felt, slack)));
      }
    }
    double matra = matraSeconds[to] * stretch;
    if (matra > 0 && least > SLIP) {
      for (int matras = -MOST_SLIPPED; matras <= MOST_SLIPPED; matras++) {
        double slipped = written * stretch + matras * matra;
        if (matras != 0 && slipped > LEAST_LEFT * matra) {
          least = Math.min(least, both(SLIP, off(slipped, felt, slack)));
        }
      }
    }
    return least;
  }

  /** The length of each sollu's matra at the tempo of the score, in seconds; 0 if unknown. */
  double[] matraSeconds() {
    return matraSeconds.clone();
  }

  private static double[] matras(List<ExpectedSollu> expected) {
    double[] matras = new double[expected.size()];
    double beats =
        matras.length == 0
            ? 0
            : expected.get(matras.length - 1).beat().minus(expected.get(0).beat()).toDouble();
    for (int k = 0; k < matras.length && beats > 0; k++) {
      double perBeat = expected.get(matras.length - 1).seconds() / beats;
      matras[k] = perBeat / expected.get(k).matrasPerBeat();
    }
    return matras;
  }

  /** The root of the sum of squares; {@code Math.hypot} took a quarter of the time of a take. */
  private static double both(double one, double other) {
    return Math.sqrt(one * one + other * other);
  }

  private static double off(double asked, double took, double slack) {
    double tolerance =
        Math.min(MOST_TOLERANCE_SECONDS, Math.max(LEAST_TOLERANCE_SECONDS, TOLERANCE * asked));
    return Math.max(0, Math.abs(took - asked) - slack) / tolerance;
  }
}
