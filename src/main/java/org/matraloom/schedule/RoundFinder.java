package org.matraloom.schedule;

import java.util.List;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** Tells which round is going on, for positions asked in ascending order. */
final class RoundFinder {

  private final List<Span> spans;
  private int next;
  private int round;

  RoundFinder(Performance performance) {
    this.spans = performance.spans();
  }

  int at(Ratio beat) {
    while (next < spans.size() && spans.get(next).startBeat().compareTo(beat) <= 0) {
      if (spans.get(next) instanceof Span.Round begun) {
        round = begun.number();
      }
      next++;
    }
    return round;
  }
}
