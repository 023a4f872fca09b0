package org.matraloom.breath;

import java.util.Collections;
import java.util.List;
import org.matraloom.score.Performance;

/**
 * Where to breathe in a performance.
 *
 * @param performance what is performed, at the tempo of its composition
 * @param settings the limits that were kept
 * @param breaths the breaths in order; the one before the first sollu is understood
 * @param stretches what is said between them, one more than there are breaths; none if nothing is
 *     said
 * @param cost what the plan costs; by {@link BreathSettings.Way#FEWEST} the points are in the last
 *     term
 * @param notes sentences about wishes of the score that could not be met, and about places that are
 *     not used alike
 */
public record BreathPlan(
    Performance performance,
    BreathSettings settings,
    List<Breath> breaths,
    List<BreathStretch> stretches,
    PlanCost cost,
    List<String> notes) {

  /** Copies the lists. */
  public BreathPlan {
    breaths = List.copyOf(breaths);
    stretches = List.copyOf(stretches);
    notes = List.copyOf(notes);
  }

  /** The plan of a performance that says nothing. */
  static BreathPlan ofSilence(Performance performance, BreathSettings settings) {
    PlanCost nothing = new PlanCost(Collections.nCopies(PlanTerm.values().length, 0L));
    return new BreathPlan(performance, settings, List.of(), List.of(), nothing, List.of());
  }

  /**
   * The stretches that no choice of places brings under the limit.
   *
   * @return in order; none if the piece can be said
   */
  public List<BreathStretch> tooLong() {
    return stretches.stream().filter(stretch -> stretch.isTooLong(settings)).toList();
  }

  /**
   * Whether every stretch keeps the limits.
   *
   * @return true if the piece can be said as planned
   */
  public boolean isPossible() {
    return tooLong().isEmpty();
  }
}
