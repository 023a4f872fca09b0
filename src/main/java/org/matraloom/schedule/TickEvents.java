package org.matraloom.schedule;

import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.matraloom.score.Moment;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/**
 * A tick on every matra.
 *
 * <p>The grid of a round begins where the round begins, so ticks and sollus agree even where a
 * round begins inside a beat. Before the first round its grid is carried back through the count-in.
 */
final class TickEvents implements Iterator<Event> {

  private final Iterator<Moment> moments;
  private final Ratio endBeat;
  private Optional<Moment.GridStart> coming;
  private Moment.GridStart grid;
  private Ratio gridEnd;
  private long matra;

  TickEvents(Performance performance, Ratio originBeat) {
    this.moments = performance.moments();
    this.endBeat = performance.endBeat();
    this.coming = nextGrid();
    int density = coming.map(Moment.GridStart::matrasPerBeat).orElse(1);
    this.gridEnd = performance.startBeat();
    this.grid = new Moment.GridStart(gridEnd, density, 0);
    this.matra = originBeat.minus(gridEnd).times(density).ceil();
  }

  @Override
  public boolean hasNext() {
    while (position().compareTo(gridEnd) >= 0) {
      if (coming.isEmpty()) {
        return false;
      }
      grid = coming.get();
      coming = nextGrid();
      gridEnd = coming.map(Moment.GridStart::beat).orElse(endBeat);
      matra = 0;
    }
    return true;
  }

  @Override
  public Event next() {
    if (!hasNext()) {
      throw new NoSuchElementException("the ticks have ended");
    }
    Event tick = new Event.Tick(position(), matra, grid.matrasPerBeat(), grid.round());
    matra++;
    return tick;
  }

  private Ratio position() {
    return grid.beat().plus(Ratio.of(matra, grid.matrasPerBeat()));
  }

  private Optional<Moment.GridStart> nextGrid() {
    while (moments.hasNext()) {
      if (moments.next() instanceof Moment.GridStart start) {
        return Optional.of(start);
      }
    }
    return Optional.empty();
  }
}
