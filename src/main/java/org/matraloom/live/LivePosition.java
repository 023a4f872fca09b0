package org.matraloom.live;

import org.matraloom.time.Ratio;

/**
 * A place that is heard.
 *
 * @param lap the lap it belongs to
 * @param liveBeat the live beat that is going on
 */
public record LivePosition(LiveSegment lap, long liveBeat) {

  /**
   * The beat of the piece that is going on.
   *
   * @return beats of the performance, whole ones
   */
  public long beat() {
    return liveBeat - lap.shiftBeats();
  }

  /**
   * Whether the hand goes alone and the mouth begins later.
   *
   * @return whether the section begins after this beat
   */
  public boolean isBeforeTheMouth() {
    return Ratio.of(beat() + 1).compareTo(lap.section().startBeat()) <= 0;
  }
}
