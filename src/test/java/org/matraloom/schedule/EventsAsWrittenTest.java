package org.matraloom.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.AbstractMap.SimpleEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.matraloom.Unrolled;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/** The events name what the score says, where it says it. */
class EventsAsWrittenTest {

  @Test
  void eventsNameTheSameSollusAtTheSameBeats() {
    for (Composition composition : Unrolled.scores()) {
      Performance performance = Performance.of(composition);
      List<Map.Entry<Ratio, String>> signs = new ArrayList<>();
      for (Event event : ScoreTimeline.of(performance, 1)) {
        if (event instanceof Event.SolluSaid said) {
          signs.add(new SimpleEntry<>(said.beat(), said.sollu().spelling()));
        } else if (event instanceof Event.Silence silence) {
          signs.add(new SimpleEntry<>(silence.beat(), "."));
        }
      }
      assertEquals(Unrolled.lines(performance), Unrolled.lines(signs, performance.soundEndBeat()));
    }
  }
}
