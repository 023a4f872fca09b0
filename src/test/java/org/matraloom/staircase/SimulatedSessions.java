package org.matraloom.staircase;

import java.util.Arrays;
import java.util.Locale;

/**
 * Sessions of simulated reciters: how near they come to the tempo at which 70.7 % of the passes are
 * clean, and after how many passes, against a ladder of equal rungs, each taken until it was clean
 * twice in a row. Run by scripts/simulate-reciters.
 */
final class SimulatedSessions {

  /** A rung of the ladder, and how near counts as near: the usual first step. */
  static final int ONE_STEP = StairSettings.USUAL_FIRST_STEP;

  static final int PASSES = 24;
  private static final int START = 45;
  private static final int MOST = 500;

  private SimulatedSessions() {}

  /**
   * What became of many sessions.
   *
   * @param settled how many settled within a step, after {@link #PASSES} passes
   * @param settledBetter how many of them within half a step
   * @param came passes until the tempo first was within half a step, the median session
   * @param ladder passes until the ladder had passed it, the median session
   * @param fewer in how many sessions the staircase needed fewer passes than the ladder
   */
  record Result(int settled, int settledBetter, int came, int ladder, int fewer) {}

  static Result of(long firstSeed, int sessions, boolean learns) {
    int settled = 0;
    int better = 0;
    int fewer = 0;
    int[] came = new int[sessions];
    int[] rungs = new int[sessions];
    for (int i = 0; i < sessions; i++) {
      SimulatedReciter reciter = new SimulatedReciter(firstSeed + i, learns);
      Staircase stairs = new Staircase(StairSettings.usual(START, 34, 200, 200));
      StairStep step = stairs.first();
      came[i] = MOST;
      for (int pass = 1; pass <= PASSES; pass++) {
        if (came[i] == MOST && Math.abs(step.tempo() - reciter.point()) <= ONE_STEP / 2.0) {
          came[i] = pass;
        }
        step =
            stairs.after(
                new PassHeard(reciter.isCleanAt(step.tempo()), java.util.Optional.empty()));
      }
      double off = Math.abs(stairs.settledTempo() - reciter.point());
      settled += off <= ONE_STEP ? 1 : 0;
      better += off <= ONE_STEP / 2.0 ? 1 : 0;
      rungs[i] = ladder(new SimulatedReciter(firstSeed + i, learns));
      fewer += came[i] < rungs[i] ? 1 : 0;
    }
    Arrays.sort(came);
    Arrays.sort(rungs);
    return new Result(settled, better, came[sessions / 2], rungs[sessions / 2], fewer);
  }

  /** Passes until a rung at the point or above was clean twice in a row. */
  private static int ladder(SimulatedReciter reciter) {
    int tempo = START;
    int clean = 0;
    for (int pass = 1; pass < MOST; pass++) {
      clean = reciter.isCleanAt(tempo) ? clean + 1 : 0;
      if (clean == 2 && tempo >= reciter.point() - ONE_STEP / 2.0) {
        return pass;
      }
      if (clean == 2) {
        tempo += ONE_STEP;
        clean = 0;
      }
    }
    return MOST;
  }

  /** Prints a row for each kind of reciter; the first seed and the number of sessions are given. */
  public static void main(String... arguments) {
    long seed = Long.parseLong(arguments[0]);
    int sessions = Integer.parseInt(arguments[1]);
    for (boolean learns : new boolean[] {false, true}) {
      System.out.printf(
          Locale.ROOT, "%s: %s%n", learns ? "learns" : "as is", of(seed, sessions, learns));
    }
  }
}
