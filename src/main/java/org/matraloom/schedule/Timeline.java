package org.matraloom.schedule;

import java.util.Iterator;
import org.matraloom.score.Performance;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;

/**
 * A source of events for one performance; every call of {@link #iterator()} starts afresh.
 *
 * <p>Events come in order of their beat; at one beat in the order in which {@link Event} lists its
 * kinds. No event is held once it has been handed out.
 */
public interface Timeline extends Iterable<Event> {

  /**
   * The performance that is laid out.
   *
   * @return the performance
   */
  Performance performance();

  /**
   * The position that is frame 0 of a rendering: where the count-in begins, or the beat on or
   * before the start where there is none.
   *
   * @return a whole beat
   */
  Ratio originBeat();

  /**
   * The last position at which anything happens: the beat on or after the landing, or the last one
   * that the hand goes on after it.
   *
   * @return beats
   */
  Ratio endBeat();

  /**
   * Whether inhalations are among the events.
   *
   * @return true if breaths were planned for what is heard
   */
  default boolean cuesBreaths() {
    return false;
  }

  /**
   * The events in order.
   *
   * @return a new iterator
   */
  @Override
  Iterator<Event> iterator();

  /**
   * When a position is heard.
   *
   * @param beat a position in beats
   * @return seconds from {@link #originBeat()} at the tempo of the composition, exact
   */
  default Ratio secondsAt(Ratio beat) {
    return performance().composition().tempo().secondsOf(beat.minus(originBeat()));
  }

  /**
   * The clock that turns positions of this timeline into frames of a rendering.
   *
   * @param ratePerSecond frames a second, 8000 to 192000
   * @return a clock at the tempo of the composition, with frame 0 at {@link #originBeat()}
   */
  default FrameClock clock(int ratePerSecond) {
    return new FrameClock(performance().composition().tempo(), ratePerSecond, originBeat());
  }
}
