package org.matraloom.breath;

import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ForwardingTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.Ratio;

/**
 * A timeline with the breaths of a plan in it: each is an {@link Event.Inhale}, and a sollu from
 * which time is taken rings no longer than up to its breath.
 *
 * @param score the timeline of the same performance
 * @param plan where to breathe
 */
public record BreathTimeline(Timeline score, BreathPlan plan) implements ForwardingTimeline {

  private static final class Breathing implements Iterator<Event> {
    private final Iterator<Event> events;
    private final List<Breath> breaths;
    private int nextBreath;
    private Optional<Event> waiting;

    Breathing(Iterator<Event> events, List<Breath> breaths) {
      this.events = events;
      this.breaths = breaths;
      this.waiting = pull();
    }

    @Override
    public boolean hasNext() {
      return waiting.isPresent() || nextBreath < breaths.size();
    }

    @Override
    public Event next() {
      if (waiting.isPresent() && !breathesBefore(waiting.get())) {
        Event event = cut(waiting.get());
        waiting = pull();
        return event;
      }
      if (nextBreath == breaths.size()) {
        throw new NoSuchElementException("the timeline has ended");
      }
      Breath breath = breaths.get(nextBreath++);
      boolean full = breath.kind() == Breath.Kind.FULL;
      return new Event.Inhale(breath.startBeat(), breath.beats(), full, breath.round());
    }

    private boolean breathesBefore(Event event) {
      return nextBreath < breaths.size()
          && breaths.get(nextBreath).startBeat().compareTo(event.beat()) < 0;
    }

    private Event cut(Event event) {
      if (event instanceof Event.SolluSaid said && nextBreath < breaths.size()) {
        Ratio stop = breaths.get(nextBreath).startBeat();
        return new Event.SolluSaid(said.spoken().stoppedAt(stop), said.stress());
      }
      return event;
    }

    private Optional<Event> pull() {
      return events.hasNext() ? Optional.of(events.next()) : Optional.empty();
    }
  }

  @Override
  public boolean cuesBreaths() {
    return true;
  }

  @Override
  public Iterator<Event> iterator() {
    return new Breathing(score.iterator(), plan.breaths());
  }
}
