package org.matraloom.sound;

import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.TalaSections;
import org.matraloom.time.FrameClock;
import org.matraloom.wav.CuePoint;

/**
 * The named places of a timeline: avartanas, rounds and changes of nadai, in order.
 *
 * <p>They are found anew each time they are read, so none is kept.
 */
final class TimelineCues implements Iterable<CuePoint> {

  private final Timeline timeline;
  private final FrameClock clock;
  private final long startFrame;

  TimelineCues(Timeline timeline, FrameClock clock, long startFrame) {
    this.timeline = timeline;
    this.clock = clock;
    this.startFrame = startFrame;
  }

  @Override
  public Iterator<CuePoint> iterator() {
    Iterator<Event> events = timeline.iterator();
    return new Iterator<>() {
      private Optional<CuePoint> next = pull();

      private Optional<CuePoint> pull() {
        Optional<CuePoint> found = Optional.empty();
        while (found.isEmpty() && events.hasNext()) {
          found = cue(events.next());
        }
        return found;
      }

      @Override
      public boolean hasNext() {
        return next.isPresent();
      }

      @Override
      public CuePoint next() {
        CuePoint cue = next.orElseThrow(() -> new NoSuchElementException("no more cue points"));
        next = pull();
        return cue;
      }
    };
  }

  private Optional<CuePoint> cue(Event event) {
    return label(event)
        .map(label -> new CuePoint(startFrame + Math.max(0, clock.frameAt(event.beat())), label));
  }

  private Optional<String> label(Event event) {
    if (event instanceof Event.HandBeat hand && hand.samam()) {
      long avartana = TalaSections.numberAt(timeline.performance().avartana(), hand.beat()) + 1;
      return Optional.of(avartana < 1 ? "count-in" : "avartana " + avartana);
    }
    if (event instanceof Event.RoundStart round) {
      String kalam = round.kalam() == 1 ? "" : ", kalam " + round.kalam();
      return Optional.of(
          "round " + round.number() + ": " + round.phrase() + ", nadai " + round.nadai() + kalam);
    }
    if (event instanceof Event.NadaiChange change) {
      return Optional.of(
          "nadai change: " + change.from() + " to " + change.to() + " matras a beat");
    }
    return Optional.empty();
  }
}
