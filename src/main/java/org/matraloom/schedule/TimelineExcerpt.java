package org.matraloom.schedule;

import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/**
 * A timeline heard from a place on: the hand and the ticks from a whole beat before it, in their
 * places of the tala, and the mouth from the place itself.
 *
 * <p>What belongs to sollus said before the place is left out, but words that lead in to the
 * beginning of the piece are kept; kriyas and ticks before the place belong to no round.
 */
public final class TimelineExcerpt implements Timeline {

  private final Timeline whole;
  private final Ratio originBeat;
  private final Ratio startBeat;

  private TimelineExcerpt(Timeline whole, Ratio originBeat, Ratio startBeat) {
    this.whole = whole;
    this.originBeat = originBeat;
    this.startBeat = startBeat;
  }

  /**
   * Begins a timeline at a place.
   *
   * @param whole the timeline
   * @param originBeat where the hand begins, a whole beat, before the timeline's own origin if
   *     wanted
   * @param startBeat where the mouth begins, not before the origin
   * @return the excerpt, with the beats of the whole
   * @throws IllegalArgumentException if the origin is not a whole beat or lies after the start
   */
  public static TimelineExcerpt of(Timeline whole, Ratio originBeat, Ratio startBeat) {
    if (!originBeat.isWhole() || originBeat.compareTo(startBeat) > 0) {
      throw new IllegalArgumentException(
          "an excerpt begins on a whole beat and not after its start, given "
              + originBeat
              + " and "
              + startBeat);
    }
    return new TimelineExcerpt(whole, originBeat, startBeat);
  }

  /**
   * Begins a timeline at a place, after whole avartanas of the tala.
   *
   * @param whole the timeline
   * @param startBeat where the mouth begins
   * @param countInAvartanas avartanas counted before it, 0 to {@value ScoreTimeline#MOST_COUNT_IN}
   * @return the excerpt, with the beats of the whole
   */
  public static TimelineExcerpt countedIn(Timeline whole, Ratio startBeat, int countInAvartanas) {
    Avartana avartana = whole.performance().avartana();
    return of(whole, ScoreTimeline.origin(startBeat, avartana, countInAvartanas), startBeat);
  }

  @Override
  public Performance performance() {
    return whole.performance();
  }

  @Override
  public Ratio originBeat() {
    return originBeat;
  }

  @Override
  public Ratio endBeat() {
    return whole.endBeat();
  }

  @Override
  public boolean cuesBreaths() {
    return whole.cuesBreaths();
  }

  /**
   * Where the mouth begins.
   *
   * @return beats
   */
  public Ratio startBeat() {
    return startBeat;
  }

  @Override
  public Iterator<Event> iterator() {
    Iterator<Event> events = whole.iterator();
    return new Iterator<>() {
      private Iterator<Event> before = beforeTheWhole();
      private Optional<Event> next = pull();

      private Optional<Event> pull() {
        if (before.hasNext()) {
          Event event = before.next();
          if (event.beat().compareTo(whole.originBeat()) < 0) {
            return Optional.of(event);
          }
          before = Collections.emptyIterator();
        }
        while (events.hasNext()) {
          Event event = events.next();
          if (isHeard(event)) {
            return Optional.of(placed(event));
          }
        }
        return Optional.empty();
      }

      @Override
      public boolean hasNext() {
        return next.isPresent();
      }

      @Override
      public Event next() {
        Event event = next.orElseThrow(() -> new NoSuchElementException("the excerpt has ended"));
        next = pull();
        return event;
      }
    };
  }

  private Iterator<Event> beforeTheWhole() {
    if (originBeat.compareTo(whole.originBeat()) >= 0) {
      return Collections.emptyIterator();
    }
    return new MergedEvents(
        List.of(
            new HandEvents(performance(), originBeat, whole.originBeat()),
            new TickEvents(performance(), originBeat)));
  }

  private boolean isHeard(Event event) {
    if (event instanceof Event.CountIn) {
      return false;
    }
    boolean fromTheOrigin =
        event instanceof Event.OfTheHand || startBeat.equals(performance().startBeat());
    return event.beat().compareTo(fromTheOrigin ? originBeat : startBeat) >= 0;
  }

  private Event placed(Event event) {
    boolean early = event.beat().compareTo(startBeat) < 0;
    return early && event instanceof Event.OfTheHand hand ? hand.beforeTheRounds() : event;
  }
}
