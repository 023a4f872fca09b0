package org.matraloom.score;

import java.util.Optional;
import org.matraloom.time.Ratio;

/**
 * A line of the plan that takes no time, where it stands in a performance.
 *
 * @param step the line
 * @param beat where it stands, in beats of the performance
 * @param span before which round or silence it stands, from 0; their number if after the last
 */
public record Notice(Step.Timeless step, Ratio beat, int span) {

  /**
   * What stands on a sheet for it.
   *
   * @return the name of a part or a tala, or the words to students; nothing for a claim
   */
  public Optional<String> words() {
    if (step instanceof Step.Part part) {
      return Optional.of(part.name());
    }
    if (step instanceof Step.ToTala turn) {
      return Optional.of("Tala " + turn.tala().name());
    }
    return step instanceof Step.Tell tell ? Optional.of(tell.text()) : Optional.empty();
  }

  /** The same in a part of the performance that leaves out what comes before. */
  Notice inPart(int firstSpan) {
    return new Notice(step, beat, span - firstSpan);
  }
}
