package org.matraloom.take;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Sollu;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;

/**
 * A sollu that the score asks for.
 *
 * @param beat where its felt beat falls, in beats of the performance
 * @param seconds the same in seconds from the first sollu, at the tempo of the score
 * @param sollu what is to be said
 * @param round the round it belongs to, from 1
 * @param entry whether a round or a phrase begins with it, so that one may begin again here
 */
public record ExpectedSollu(Ratio beat, double seconds, Sollu sollu, int round, boolean entry) {

  private static final int ANY_RATE = 48_000;

  /**
   * All sollus of a timeline.
   *
   * @param timeline the performance laid out
   * @return in order of time; empty if nothing is said
   */
  public static List<ExpectedSollu> of(Timeline timeline) {
    FrameClock clock = timeline.clock(ANY_RATE);
    List<ExpectedSollu> sollus = new ArrayList<>();
    double first = 0;
    for (Event event : timeline) {
      if (event instanceof Event.SolluSaid said) {
        double seconds = clock.secondsAt(said.beat());
        first = sollus.isEmpty() ? seconds : first;
        boolean entry = said.stress() == Event.Stress.ROUND || said.stress() == Event.Stress.PHRASE;
        sollus.add(
            new ExpectedSollu(said.beat(), seconds - first, said.sollu(), said.round(), entry));
      }
    }
    return sollus;
  }
}
