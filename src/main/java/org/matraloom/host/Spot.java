package org.matraloom.host;

import org.matraloom.time.Ratio;

/**
 * A place that is heard.
 *
 * @param lap the lap it belongs to
 * @param liveBeat the live beat that is going on
 */
record Spot(Lap lap, long liveBeat) {

  /** The beat of the piece that is going on. */
  long beat() {
    return liveBeat - lap.shiftBeats();
  }

  /** Whether the hand goes alone and the mouth begins later. */
  boolean isBeforeTheMouth() {
    return Ratio.of(beat() + 1).compareTo(lap.section().startBeat()) <= 0;
  }
}
