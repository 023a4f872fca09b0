package org.matraloom.app.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.time.Ratio;

/** A place is said in the words in which a score, and an option, takes it. */
class PlacesReadBackTest {

  private static final Lexicon LEXICON = Lexicon.standard();
  private static final int[] PARTS = {1, 2, 3, 4, 5, 7, 8, 9, 10, 16, 20, 36};

  @Test
  void everyPlaceIsReadBack() {
    int seen = 0;
    for (String tala : List.of("adi", "rupaka", "misra chapu", "khanda chapu", "3+2+2")) {
      for (int kalai : new int[] {1, 2, 4}) {
        String head = "tala " + tala + "\nkalai " + kalai + "\n";
        Avartana avartana = read(head).avartana();
        for (int parts : PARTS) {
          for (int part = 0; part < avartana.beats() * parts; part++) {
            Ratio place = Ratio.of(part, parts);
            String said = avartana.say(place);
            assertEquals(place, read(head + "start " + said + "\n").startBeat(), said);
            assertEquals(place, read(head + "eduppu " + said + "\n").eduppuBeat(), said);
            assertEquals(said, TypedPlace.written(said, parts, kalai), "an option takes it too");
            assertTrue(said.length() <= 13, said);
            seen++;
          }
        }
      }
    }
    assertTrue(seen > 10_000, "places: " + seen);
  }

  private static Composition read(String head) {
    return ScoreReader.read(head + "Any = ta\n", "", LEXICON).composition().orElseThrow();
  }
}
