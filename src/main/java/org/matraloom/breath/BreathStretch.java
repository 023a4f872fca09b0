package org.matraloom.breath;

import org.matraloom.time.Ratio;

/**
 * What is said on one breath.
 *
 * @param startBeat where its first sollu begins, in beats of the performance
 * @param endBeat where the next breath begins, or where the last sollu may be let go
 * @param seconds how long it is, exact
 * @param sollus how many sollus it has
 * @param round the round in which it begins, from 1
 * @param phrase the phrase in which it begins
 */
public record BreathStretch(
    Ratio startBeat, Ratio endBeat, Ratio seconds, long sollus, int round, String phrase) {

  /**
   * Whether it is more than one breath carries.
   *
   * @param settings the limits
   * @return true if it is longer than either limit
   */
  public boolean isTooLong(BreathSettings settings) {
    return seconds.compareTo(settings.longestSeconds()) > 0 || sollus > settings.longestSollus();
  }
}
