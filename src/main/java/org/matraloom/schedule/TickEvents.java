package org.matraloom.schedule;

import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import org.matraloom.score.Performance;
import org.matraloom.score.Recitation;
import org.matraloom.score.Span;
import org.matraloom.score.Utterance;
import org.matraloom.time.Ratio;

/**
 * A tick on every matra.
 *
 * <p>The grid of a round begins where the round begins, so ticks and sollus agree even where a
 * round begins inside a beat. Before the first round its grid is carried back through the count-in.
 */
final class TickEvents implements Iterator<Event> {

  private final Performance performance;
  private final List<Span> spans;
  private final Ratio originBeat;

  private int nextSpan;
  private Iterator<Utterance> changes = List.<Utterance>of().iterator();
  private Ratio spanStart = Ratio.ZERO;
  private int round;

  private Ratio gridStart;
  private Ratio gridEnd;
  private int matrasPerBeat;
  private int nextMatrasPerBeat;
  private long matra;

  TickEvents(Performance performance, Ratio originBeat) {
    this.performance = performance;
    this.spans = performance.spans();
    this.originBeat = originBeat;
    this.gridStart = performance.startBeat();
    this.gridEnd = performance.startBeat();
    this.matrasPerBeat = spans.isEmpty() ? 1 : spans.get(0).matrasPerBeat();
    this.nextMatrasPerBeat = matrasPerBeat;
    this.matra = originBeat.minus(gridStart).times(matrasPerBeat).ceil();
  }

  @Override
  public boolean hasNext() {
    while (position().compareTo(gridEnd) >= 0) {
      if (!openGrid()) {
        return false;
      }
    }
    return true;
  }

  @Override
  public Event next() {
    if (!hasNext()) {
      throw new NoSuchElementException("the ticks have ended");
    }
    Event tick = new Event.Tick(position(), matra, matrasPerBeat, round);
    matra++;
    return tick;
  }

  private Ratio position() {
    return gridStart.plus(Ratio.of(matra, matrasPerBeat));
  }

  private boolean openGrid() {
    if (gridEnd.equals(spanEnd()) && !openSpan()) {
      return false;
    }
    gridStart = gridEnd;
    matrasPerBeat = nextMatrasPerBeat;
    matra = 0;
    gridEnd = nextChange();
    return true;
  }

  private Ratio spanEnd() {
    return nextSpan == 0 ? performance.startBeat() : spans.get(nextSpan - 1).endBeat();
  }

  private boolean openSpan() {
    if (nextSpan == spans.size()) {
      return false;
    }
    Span span = spans.get(nextSpan++);
    spanStart = span.startBeat();
    nextMatrasPerBeat = span.matrasPerBeat();
    if (span instanceof Span.Round begun) {
      round = begun.number();
      changes = Recitation.of(begun, performance.composition());
    } else {
      changes = List.<Utterance>of().iterator();
    }
    return true;
  }

  private Ratio nextChange() {
    while (changes.hasNext()) {
      if (changes.next() instanceof Utterance.Density density) {
        nextMatrasPerBeat = density.matrasPerBeat();
        return spanStart.plus(density.atBeat());
      }
    }
    return spanEnd();
  }
}
