package org.matraloom.schedule;

import java.util.ArrayDeque;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Queue;
import org.matraloom.score.Avartana;
import org.matraloom.score.Moment;
import org.matraloom.score.MomentListener;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Spoken;

/**
 * What the mouth does: sollus with their karvais, silences, and the marks of rounds and phrases.
 */
final class VoiceEvents implements Iterator<Event>, MomentListener {

  private final Avartana avartana;
  private final Iterator<Moment> moments;
  private final Queue<Event> ready = new ArrayDeque<>();

  VoiceEvents(Performance performance) {
    this.avartana = performance.avartana();
    this.moments = performance.moments();
  }

  @Override
  public boolean hasNext() {
    while (ready.isEmpty() && moments.hasNext()) {
      moments.next().tell(this);
    }
    return !ready.isEmpty();
  }

  @Override
  public Event next() {
    if (!hasNext()) {
      throw new NoSuchElementException("all has been said");
    }
    return ready.remove();
  }

  @Override
  public void spoken(Spoken spoken) {
    ready.add(new Event.SolluSaid(spoken, stress(spoken)));
  }

  private Stress stress(Spoken spoken) {
    boolean samam = avartana.placeOf(spoken.beat()).signum() == 0;
    return switch (spoken.opens()) {
      case ROUND -> Stress.ROUND;
      case PHRASE -> samam ? Stress.SAMAM : Stress.PHRASE;
      case REST_OF_PHRASE, NOTHING -> samam ? Stress.SAMAM : Stress.NONE;
    };
  }

  @Override
  public void rests(Moment.Rest rest) {
    ready.add(new Event.Silence(rest.matras(), rest.round()));
  }

  @Override
  public void spanStarts(Moment.SpanStart start) {
    if (start.span() instanceof Span.Round round) {
      ready.add(
          new Event.RoundStart(
              round.startBeat(), round.number(), round.phrase(), round.nadai(), round.kalam()));
    }
  }

  @Override
  public void phraseStarts(Moment.PhraseStart start) {
    ready.add(new Event.SectionStart(start.beat(), start.name(), start.round()));
  }

  @Override
  public void nadaiChanges(Moment.NewNadai change) {
    ready.add(new Event.NadaiChange(change.beat(), change.from(), change.to()));
  }

  @Override
  public void phraseEnds(Moment.PhraseEnd end) {
    // no event: a section lasts until the next one begins
  }

  @Override
  public void gridStarts(Moment.GridStart start) {
    // no event: the ticks follow it
  }

  @Override
  public void barPassed(Moment.BarPassed passed) {
    // no event: a bar is a claim and takes no time
  }

  @Override
  public void groupStarts(Moment.GroupStart start) {
    // what it says comes as sollus
  }

  @Override
  public void breathWished(Moment.BreathWished wished) {
    // it is told by the breath plan, not by the timeline
  }
}
