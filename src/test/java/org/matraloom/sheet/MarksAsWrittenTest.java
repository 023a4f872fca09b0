package org.matraloom.sheet;

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

/** The marks of a page name what the score says, where it says it. */
class MarksAsWrittenTest {

  @Test
  void marksNameTheSameSollusAtTheSameBeats() {
    for (Composition composition : Unrolled.scores()) {
      Performance performance = Performance.of(composition);
      List<Map.Entry<Ratio, String>> signs = new ArrayList<>();
      for (Mark mark : MarkReader.read(performance, List.of()).marks()) {
        String sign =
            mark instanceof Mark.Said said
                ? said.sollu().spelling()
                : mark instanceof Mark.Karvai ? "," : ".";
        signs.add(new SimpleEntry<>(mark.beat(), sign));
      }
      assertEquals(Unrolled.lines(performance), Unrolled.lines(signs, performance.soundEndBeat()));
    }
  }
}
