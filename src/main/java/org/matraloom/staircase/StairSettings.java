package org.matraloom.staircase;

/**
 * Between what a staircase moves, in beats a minute.
 *
 * @param start where it begins
 * @param slowest nothing slower is asked for
 * @param goal the tempo to reach
 * @param mouthLimit nothing faster is asked for, whatever the goal
 * @param firstStep how far the first move goes
 * @param leastStep how far the smallest goes
 */
public record StairSettings(
    int start, int slowest, int goal, int mouthLimit, int firstStep, int leastStep) {

  /** How far the first move goes as a rule: a rung of the ladder. */
  public static final int USUAL_FIRST_STEP = 10;

  /** How far the smallest move goes as a rule: less is hardly felt as another tempo. */
  public static final int USUAL_LEAST_STEP = 3;

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException if a number is below 1, or the slowest is not the slowest
   */
  public StairSettings {
    if (slowest < 1 || leastStep < 1 || firstStep < leastStep) {
      throw new IllegalArgumentException("a staircase moves by 1 or more above 0");
    }
    if (goal < slowest || mouthLimit < slowest) {
      throw new IllegalArgumentException(
          "the slowest tempo, " + slowest + ", is above the goal " + goal + " or " + mouthLimit);
    }
    start = Math.max(slowest, Math.min(start, Math.min(goal, mouthLimit)));
  }

  /**
   * A staircase of the usual steps.
   *
   * @param start where it begins; brought between the slowest and the fastest
   * @param slowest nothing slower is asked for
   * @param goal the tempo to reach
   * @param mouthLimit nothing faster is asked for
   * @return the settings
   */
  public static StairSettings usual(int start, int slowest, int goal, int mouthLimit) {
    return new StairSettings(start, slowest, goal, mouthLimit, USUAL_FIRST_STEP, USUAL_LEAST_STEP);
  }

  /** The fastest tempo that is asked for. */
  int top() {
    return Math.min(goal, mouthLimit);
  }
}
