package org.matraloom.app.handon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.Ratio;

/** The rows of two reciters in one order of time; hand, ticks and marks are those of the first. */
final class ReciterRows {

  /**
   * A row of the printed timeline.
   *
   * @param reciter whose it is, 1 or 2; 0 for what belongs to both: the count-in and the hand
   * @param beat where it happens, in beats
   * @param row what happens
   */
  record Line(int reciter, Ratio beat, EventRow row) {}

  private ReciterRows() {}

  static List<Line> of(Timeline first, Timeline second) {
    List<Line> lines = new ArrayList<>();
    add(first, 1, lines);
    add(second, 2, lines);
    lines.sort(Comparator.comparing(Line::beat));
    return lines;
  }

  private static void add(Timeline timeline, int reciter, List<Line> lines) {
    int round = 0;
    for (Event event : timeline) {
      EventRow row = EventRow.of(event, round);
      round = row.round();
      boolean shared = event instanceof Event.OfTheHand || event instanceof Event.CountIn;
      boolean ticks = event instanceof Event.Tick;
      if (!shared || reciter == 1) {
        lines.add(new Line(shared && !ticks ? 0 : reciter, event.beat(), row));
      }
    }
  }
}
