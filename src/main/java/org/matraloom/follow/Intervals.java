package org.matraloom.follow;

import java.util.List;

/**
 * What the time between two onsets costs if they are two sollus of the score: the square of how far
 * it is off, in standard deviations, halved, as for the logarithm of a normal likelihood.
 */
final class Intervals {

  /** What costs more is no interval of the score. */
  static final double MOST_COST = 6;

  /** An interval varies at least by this share of its length. */
  private static final double SHARE_FIRST = 0.08;

  private static final double SHARE_LEARNT = 0.05;
  private static final double MOST_SPREAD_SECONDS = 0.17;

  /** From so many deviations on, costs grow evenly (P. J. Huber, Ann. Math. Stat. 35 (1964) 73). */
  private static final double HUBER = 1.5;

  /** A sound nearer to its sollu's place than to the next costs no more: nasals begin twice. */
  private static final double MOST_INSIDE = 2;

  private static final double NEARER_THAN_NEXT = 0.42;

  /** What is off by so many deviations does not move the pulse as much. */
  private static final double STRAY = 3;

  private static final double ALPHA = 0.5;
  private static final double STRAY_ALPHA = 0.2;

  /** Another way than the written one costs this much. */
  private static final double OTHER_WAY = 0.1;

  /** What a matra or two too many or too few cost. */
  private static final double SLIP = 3;

  /** What a wait costs, and a part of a matra too early. */
  private static final double WAIT = 3.6;

  private static final double HURRY = 4.4;

  private static final int MOST_SLIPPED = 2;

  /** From half a matra on it is no matter of evenness. */
  private static final double LEAST_JUMP = 0.5;

  /** What is left of an interval is at least this share of a matra. */
  private static final double LEAST_LEFT = 0.9;

  private final double[][] ways;
  private final double[] matraSeconds;
  private final PairingModel model;
  private final double leastSpread;
  private final double share;
  private double offSeconds;
  private double slackSeconds;
  private double matraSecondsHere;
  private boolean jumped;

  /**
   * Prepares to judge.
   *
   * @param ways when each sollu falls in each way to say the score, in seconds at its tempo
   * @param matraSeconds the length of each sollu's matra at that tempo; 0 if it is not known
   * @param model what is known of the performer
   */
  Intervals(double[][] ways, double[] matraSeconds, PairingModel model) {
    this.ways = ways;
    this.matraSeconds = matraSeconds;
    this.model = model;
    leastSpread = model.spreadSeconds();
    share = model.lagDoubt() == 0 ? SHARE_LEARNT : SHARE_FIRST;
  }

  /** The length of each sollu's matra at the tempo of the score, in seconds; 0 if unknown. */
  static double[] matras(List<ExpectedSollu> expected) {
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

  /**
   * What an interval costs in the way that fits it best.
   *
   * @param from a place in the score
   * @param to a later one
   * @param took the time from where the pulse had the one to the onset of the other, in seconds
   * @param stretch how many times as slow as the score the take is here
   * @return at least 0; more than {@link #MOST_COST} if it fits in no way
   */
  double cost(int from, int to, double took, double stretch) {
    double lag = model.lagSeconds()[to] - model.lagSeconds()[from];
    double slack =
        model.slackSeconds()[from] + model.slackSeconds()[to] + model.lagDoubt() * Math.abs(lag);
    slackSeconds = slack;
    matraSecondsHere = matraSeconds[to] * stretch;
    double felt = took + lag;
    double written = ways[0][to] - ways[0][from];
    offSeconds = felt - written * stretch;
    jumped = false;
    double least = cost(written * stretch, felt, slack);
    for (int w = 1; w < ways.length && least > OTHER_WAY; w++) {
      double other = ways[w][to] - ways[w][from];
      if (other != written) {
        double cost = OTHER_WAY + cost(other * stretch, felt, slack);
        if (cost < least) {
          least = cost;
          offSeconds = felt - other * stretch;
        }
      }
    }
    double matra = matraSeconds[to] * stretch;
    double off = felt - written * stretch;
    if (matra > 0 && least > SLIP && Math.abs(off) > LEAST_JUMP * matra) {
      least = Math.min(least, jump(written * stretch, felt, off, matra, slack));
    }
    return least;
  }

  private double jump(double asked, double felt, double off, double matra, double slack) {
    jumped = true;
    offSeconds = 0;
    double least = off > 0 ? WAIT : felt > LEAST_LEFT * matra ? HURRY : MOST_COST + 1;
    for (int matras = -MOST_SLIPPED; matras <= MOST_SLIPPED; matras++) {
      double slipped = asked + matras * matra;
      if (matras != 0 && slipped > LEAST_LEFT * matra) {
        double cost = SLIP + cost(slipped, felt, slack);
        if (cost < least) {
          least = cost;
          offSeconds = felt - slipped;
        }
      }
    }
    return least;
  }

  /** How much later than the pulse the later sound of the last interval is, in seconds. */
  double lateSeconds() {
    double excess = excessSeconds();
    return offSeconds - (isStray(excess) ? STRAY_ALPHA : ALPHA) * excess;
  }

  /** By how much the last interval says that the pulse is slower, in seconds. */
  double slowerSeconds() {
    double excess = excessSeconds();
    return isStray(excess) ? STRAY_ALPHA * excess : excess;
  }

  private boolean isStray(double excess) {
    return Math.abs(excess) > STRAY * leastSpread;
  }

  /** By how much of what it is off the lags of the two sollus cannot be to blame, in seconds. */
  private double excessSeconds() {
    return Math.copySign(Math.max(0, Math.abs(offSeconds) - slackSeconds), offSeconds);
  }

  /** Whether the last interval could only be half a matra or more too long or too short. */
  boolean jumped() {
    return jumped;
  }

  private double cost(double asked, double took, double slack) {
    double spread = Math.min(MOST_SPREAD_SECONDS, Math.max(leastSpread, share * asked));
    double off = Math.max(0, Math.abs(took - asked) - slack) / spread;
    double cost = off < HUBER ? off * off / 2 : HUBER * (off - HUBER / 2);
    return Math.abs(took - asked) < NEARER_THAN_NEXT * matraSecondsHere
        ? Math.min(cost, MOST_INSIDE)
        : cost;
  }
}
