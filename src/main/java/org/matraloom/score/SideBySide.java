package org.matraloom.score;

import java.util.List;
import org.matraloom.time.Ratio;

/**
 * A line of the first reciter and what the second one says beside it.
 *
 * @param lineFrom where the line begins, in beats of the performance
 * @param lineTo where it ends, all its rounds included
 * @param silent whether the line is a silence of the first reciter
 * @param from where the second reciter begins
 * @param to where the second reciter ends
 * @param missBeats by how much the two do not end together, positive if the second one ends later;
 *     0 if the second ends with this line or with a later round, or within a silence
 */
public record SideBySide(
    Ratio lineFrom, Ratio lineTo, boolean silent, Ratio from, Ratio to, Ratio missBeats) {

  /**
   * How late the second reciter begins, not yet done with what came before.
   *
   * @return beats, 0 if both begin together
   */
  public Ratio lateBeats() {
    return from.minus(lineFrom);
  }

  /**
   * Whether both begin and end together.
   *
   * @return true if nothing is missed
   */
  public boolean isEven() {
    return missBeats.signum() == 0 && lateBeats().signum() == 0;
  }

  SideBySide until(Ratio later) {
    return new SideBySide(lineFrom, lineTo, silent, from, later, missBeats);
  }

  /** The same with its miss, given where the rounds and silences of the first reciter end. */
  SideBySide meeting(List<Ratio> ends) {
    boolean within = silent && to.compareTo(lineTo) < 0;
    Ratio miss = within || ends.contains(to) ? Ratio.ZERO : to.minus(lineTo);
    return new SideBySide(lineFrom, lineTo, silent, from, to, miss);
  }
}
