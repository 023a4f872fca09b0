package org.matraloom.schedule;

import java.util.Iterator;
import java.util.stream.StreamSupport;
import org.matraloom.score.TalaSections;
import org.matraloom.time.Ratio;

/**
 * A timeline whose hand and ticks fall silent for some avartanas; everything else, and the place of
 * everything that is heard, stays as it was. The count-in is always heard.
 *
 * @param score the timeline with every kriya
 * @param pattern which avartanas are heard
 */
public record ClickTimeline(Timeline score, ClickPattern pattern) implements ForwardingTimeline {

  @Override
  public Iterator<Event> iterator() {
    return StreamSupport.stream(score.spliterator(), false).filter(this::isHeard).iterator();
  }

  private boolean isHeard(Event event) {
    if (event instanceof Event.OfTheHand hand) {
      return switch (heardAt(event.beat())) {
        case ALL -> true;
        case SAMAM -> hand.samam();
        case NOTHING -> false;
      };
    }
    return true;
  }

  private ClickPattern.Heard heardAt(Ratio beat) {
    long first = TalaSections.numberAt(performance().avartana(), performance().startBeat());
    long avartana = TalaSections.numberAt(performance().avartana(), beat) - first;
    return avartana < 0 ? ClickPattern.Heard.ALL : pattern.in(avartana);
  }
}
