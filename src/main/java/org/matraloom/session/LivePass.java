package org.matraloom.session;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.matraloom.onset.BandEnergies;

/**
 * How a pass went while it was played.
 *
 * @param isWhole whether it came to its end and no key asked for another
 * @param marks what was heard live, in the order of the score
 * @param sollus how many sollus the pass asks for
 * @param guideDb how loud the guide is in the microphone, in dB below full scale; empty if it is
 *     not heard
 * @param broken how often the sound broke off: the guide ran dry, or frames were lost
 * @param heard what was looked at of the take meanwhile; empty if some of it was not
 */
public record LivePass(
    boolean isWhole,
    List<Shown> marks,
    int sollus,
    OptionalDouble guideDb,
    int broken,
    Optional<BandEnergies> heard) {

  /**
   * A mark and when it could be seen.
   *
   * @param mark the mark
   * @param shownFrame the frame that was captured when it was on the screen
   */
  public record Shown(SaidMark mark, long shownFrame) {}

  /** Copies the list. */
  public LivePass {
    marks = List.copyOf(marks);
  }
}
