package org.matraloom.verdict;

/** The numbers of the drills that follow a take, in whole beats a minute. */
final class PracticeTempo {

  /** What each step of a ladder adds. */
  static final int STEP = 4;

  /** The nadais that plain words are known for. */
  static final int LEAST_NADAI = 3;

  static final int MOST_NADAI = 9;

  private static final double SLOWER = 0.8;
  private static final double QUICKER = 1.1;
  private static final int LEAST = 20;

  private PracticeTempo() {}

  /** The tempo of a take. */
  static int of(double beatsPerMinute) {
    return (int) Math.max(LEAST, Math.round(beatsPerMinute));
  }

  /** A tempo at which what went wrong can be mended. */
  static int slower(double beatsPerMinute) {
    return of(SLOWER * beatsPerMinute);
  }

  /** The next tempo after a clean take. */
  static int quicker(double beatsPerMinute) {
    return of(beatsPerMinute * QUICKER);
  }
}
