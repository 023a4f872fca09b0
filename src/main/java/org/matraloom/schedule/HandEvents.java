package org.matraloom.schedule;

import java.util.Iterator;
import java.util.NoSuchElementException;
import org.matraloom.score.Avartana;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/** The kriyas, one on every beat from the origin to the end, whatever the nadai does. */
final class HandEvents implements Iterator<Event> {

  private final Avartana avartana;
  private final RoundFinder rounds;
  private final long lastBeat;
  private long nextBeat;

  HandEvents(Performance performance, Ratio originBeat, Ratio endBeat) {
    this.avartana = performance.avartana();
    this.rounds = new RoundFinder(performance);
    this.nextBeat = originBeat.floor();
    this.lastBeat = endBeat.floor();
  }

  @Override
  public boolean hasNext() {
    return nextBeat <= lastBeat;
  }

  @Override
  public Event next() {
    if (!hasNext()) {
      throw new NoSuchElementException("the hand has stopped");
    }
    long beat = nextBeat++;
    Ratio position = Ratio.of(beat);
    return new Event.HandBeat(
        position,
        avartana.kriyaAt(beat),
        avartana.isSamam(beat),
        avartana.repeatsKriya(beat),
        rounds.at(position));
  }
}
