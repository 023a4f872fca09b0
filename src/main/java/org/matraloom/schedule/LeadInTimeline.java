package org.matraloom.schedule;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.matraloom.score.Sollu;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/**
 * A timeline with plain words spoken in its count-in, up to the first sollu of the performance.
 *
 * @param score the timeline that is led into
 * @param fromBeat where the words begin, not before the origin of the timeline
 * @param matrasPerBeat the matras of a beat in which the words are said
 * @param sollus the sollus of the words, one a matra
 */
public record LeadInTimeline(Timeline score, Ratio fromBeat, int matrasPerBeat, List<Sollu> sollus)
    implements ForwardingTimeline {

  private static final int BEFORE_THE_FIRST_ROUND = 0;

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if the words begin before the timeline, or run on after the
   *     first sollu
   */
  public LeadInTimeline {
    sollus = List.copyOf(sollus);
    Ratio end = fromBeat.plus(Ratio.of(sollus.size(), matrasPerBeat));
    if (fromBeat.compareTo(score.originBeat()) < 0
        || end.compareTo(score.performance().startBeat()) > 0) {
      throw new IllegalArgumentException(
          "lead-in words lie between the beginning of the count-in and the start");
    }
  }

  @Override
  public Iterator<Event> iterator() {
    Ratio matra = Ratio.of(1, matrasPerBeat);
    List<Event> words = new ArrayList<>();
    for (int i = 0; i < sollus.size(); i++) {
      Ratio beat = fromBeat.plus(matra.times(i));
      Stress stress = beat.isWhole() ? Stress.PHRASE : Stress.NONE;
      Spoken word = Spoken.aside(beat, sollus.get(i), matrasPerBeat, BEFORE_THE_FIRST_ROUND);
      words.add(new Event.SolluSaid(word, stress));
    }
    return new MergedEvents(List.of(score.iterator(), words.iterator()));
  }
}
