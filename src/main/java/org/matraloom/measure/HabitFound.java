package org.matraloom.measure;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.matraloom.follow.ExpectedSollu;

/**
 * A habit that the data of a round bear out.
 *
 * @param habit which
 * @param round in which round, from 1
 * @param amount how much of it, the median over the beats that have it: 0 is even, 1 the whole
 *     habit
 * @param sure how sure, 0 to 1: the share of the unevenness of the round that it explains
 * @param beats how many beats have it
 */
public record HabitFound(Habit habit, int round, double amount, double sure, int beats) {

  /**
   * The rounds that were said at the speed of the nadai before.
   *
   * @param habits all habits of a take
   * @return numbers of rounds, from 1
   */
  static Set<Integer> atOldSpeed(List<HabitFound> habits) {
    return habits.stream()
        .filter(found -> found.habit == Habit.OLD_SPEED_KEPT)
        .map(HabitFound::round)
        .collect(Collectors.toSet());
  }

  /**
   * Whether a sollu tells where the beat is: in a round that is said in a bad habit only one on the
   * beat does, and in one at the old speed none.
   *
   * @param habits all habits of a take
   * @param asked the sollu
   * @return false if the habit has moved it
   */
  static boolean isTrusted(List<HabitFound> habits, ExpectedSollu asked) {
    return habits.stream()
        .filter(found -> found.round == asked.round())
        .allMatch(found -> found.habit != Habit.OLD_SPEED_KEPT && asked.matra() == 1);
  }
}
