package org.matraloom.breath;

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
 * @param cost the points of the plan by {@link BreathCost}; no other choice costs less
 */
public record BreathPlan(
    Performance performance,
    BreathSettings settings,
    List<Breath> breaths,
    List<Stretch> stretches,
    long cost) {

  /** Copies the lists. */
  public BreathPlan {
    breaths = List.copyOf(breaths);
    stretches = List.copyOf(stretches);
  }

  /**
   * The stretches that no choice of places brings under the limit.
   *
   * @return in order; none if the piece can be said
   */
  public List<Stretch> tooLong() {
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
