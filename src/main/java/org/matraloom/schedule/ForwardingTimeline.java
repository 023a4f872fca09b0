package org.matraloom.schedule;

import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/** A timeline that changes the events of another one and keeps its place and length. */
public interface ForwardingTimeline extends Timeline {

  /**
   * The timeline that is changed.
   *
   * @return the other timeline
   */
  Timeline score();

  @Override
  default Performance performance() {
    return score().performance();
  }

  @Override
  default Ratio originBeat() {
    return score().originBeat();
  }

  @Override
  default Ratio endBeat() {
    return score().endBeat();
  }

  @Override
  default boolean cuesBreaths() {
    return score().cuesBreaths();
  }
}
