package org.matraloom.measure;

import org.matraloom.madetake.SolluTruth;
import org.matraloom.madetake.TakePlan;

/**
 * Breaths that were found in a made take, held against those that were taken.
 *
 * @param taken how many were taken
 * @param found how many of them lie in a pause that was found
 * @param pauses how many pauses were found
 * @param longestErrorSeconds the longest time on one breath, measured less true
 */
record BreathVerdict(int taken, int found, int pauses, double longestErrorSeconds) {

  static BreathVerdict of(TakePlan truth, BreathFindings breathing) {
    int found = 0;
    for (double breath : truth.breaths()) {
      boolean there =
          breathing.taken().stream()
              .anyMatch(
                  pause ->
                      breath >= pause.atSeconds() && breath <= pause.atSeconds() + pause.seconds());
      found += there ? 1 : 0;
    }
    return new BreathVerdict(
        truth.breaths().size(),
        found,
        breathing.taken().size(),
        breathing.longestSeconds() - longest(truth));
  }

  private static double longest(TakePlan truth) {
    double longest = 0;
    double from = truth.sollus().get(0).feltSeconds();
    double until = from;
    int next = 0;
    for (SolluTruth sollu : truth.sollus()) {
      if (next < truth.breaths().size() && sollu.feltSeconds() > truth.breaths().get(next)) {
        from = sollu.feltSeconds();
        next++;
      }
      until = sollu.feltSeconds() + sollu.lengthSeconds();
      longest = Math.max(longest, until - from);
    }
    return longest;
  }
}
