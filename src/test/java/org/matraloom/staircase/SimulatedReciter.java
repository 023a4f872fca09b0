package org.matraloom.staircase;

import java.util.Random;

/**
 * A reciter whose passes are clean with a probability that falls with the tempo along a logistic
 * curve, all from one seed.
 */
final class SimulatedReciter {

  private static final double LEARNT_SHARE = 0.15;

  /** Natural logarithm of the odds of the square root of one half. */
  private static final double ODDS_707 = Math.log(Math.sqrt(0.5) / (1 - Math.sqrt(0.5)));

  private final Random random;
  private final double spreadBpm;
  private final double learntBpm;
  private final double passesToLearn = 10;
  private double middleBpm;
  private final double endBpm;

  /** The curve has its middle at 70 to 110 and falls from 73 % to 27 % over 4 to 12. */
  SimulatedReciter(long seed, boolean learns) {
    random = new Random(seed * 7_919 + 17);
    middleBpm = 70 + 40 * random.nextDouble();
    spreadBpm = 2 + 4 * random.nextDouble();
    learntBpm = learns ? LEARNT_SHARE * middleBpm * random.nextDouble() : 0;
    endBpm = middleBpm + learntBpm;
  }

  /** Says it once at a tempo; whoever learns is nearer to the end of the curve afterwards. */
  boolean isCleanAt(double beatsPerMinute) {
    boolean clean =
        random.nextDouble() < 1 / (1 + Math.exp((beatsPerMinute - middleBpm) / spreadBpm));
    middleBpm += (endBpm - middleBpm) / passesToLearn;
    return clean;
  }

  /** The tempo at which 70.7 of a hundred passes are clean now. */
  double point() {
    return middleBpm - ODDS_707 * spreadBpm;
  }
}
