package org.matraloom.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.matraloom.Unrolled;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/** What is cut out for practice names what the score says, where it says it. */
class ExcerptsAsWrittenTest {

  @Test
  void aRoundCutWholeSaysTheSame() {
    int rounds = 0;
    for (Composition composition : Unrolled.scores()) {
      Performance performance = Performance.of(composition);
      Span.Round round = performance.rounds().get(0);
      PhraseExcerpt excerpt =
          PhraseExcerpt.of(
              round, composition, round.startBeat(), round.endBeat(), Lexicon.standard());
      if (excerpt.sequence().elements().isEmpty()) {
        continue;
      }
      Composition cut =
          new Composition(
              "",
              composition.avartana(),
              composition.tempo(),
              round.startBeat(),
              Ratio.ZERO,
              Map.of("Cut", excerpt.sequence()),
              List.of(new Step.Say("Cut", 1, round.nadai(), round.kalam())));
      assertEquals(
          Unrolled.lines(performance.onlyRounds(1, 1)), Unrolled.lines(Performance.of(cut)));
      rounds++;
    }
    assertTrue(rounds > 500, "rounds were cut: " + rounds);
  }
}
