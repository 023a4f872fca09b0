package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.spell.ScorePrinter;

class ScorePrinterTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  private static Composition read(String text) {
    Reading reading = ScoreReader.read(text, "printed", LEXICON);
    assertTrue(reading.composition().isPresent(), () -> text + "\n" + reading.format());
    return RandomScores.withoutPlaces(reading.composition().get());
  }

  @Test
  void whatIsPrintedReadsTheSame() {
    RandomScores scores = new RandomScores(20_250_101);
    Set<String> seen = new HashSet<>();
    for (int number = 0; number < 2_000; number++) {
      Composition composition = scores.composition();
      String printed = ScorePrinter.print(composition);
      Composition again = read(printed);
      assertEquals(composition, again, printed);
      assertEquals(printed, ScorePrinter.print(again));
      seen.add(printed);
    }
    assertEquals(2_000, seen.size(), "the scores differ");
  }

  @Test
  void anUntidyHandReadsTheSame() {
    for (int number = 0; number < 500; number++) {
      String tidy = ScorePrinter.print(new RandomScores(number).composition());
      String untidy = new RandomScores(number).text();
      assertEquals(read(tidy), read(untidy), untidy);
    }
  }
}
