package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

class ScoreReaderTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  private static final String GUTTER_SONG =
      """
      # a note
      title   Gutter Song
      tala    rupaka               # any of the 35 by name
      kalai   1
      tempo   66                   # beats a minute
      start   sam                  # where the first round begins
      eduppu  sam                  # where the last matra must end

      Drip  = takita , takita ,
      Rain  = takadimi takajunu
      Fall  = tadiginatom .
      Tail  = 9(1)9(1)9
      Song  = Drip Rain (Fall) x3 [takadimi takadimi] Tail

      perform
        Song x2   nadai 4
        Song      nadai 5
      """;

  private static Composition read(String text) {
    Reading reading = ScoreReader.read(text, "test.loom", LEXICON);
    assertTrue(reading.composition().isPresent(), reading.format());
    return reading.composition().get();
  }

  @Test
  void aWholeScoreIsRead() {
    Composition song = read(GUTTER_SONG);
    assertEquals("Gutter Song", song.title());
    assertEquals("chatusra rupaka", song.avartana().tala().name());
    assertEquals(Ratio.of(66), song.tempo().beatsPerMinute());
    assertEquals(
        List.of("Drip", "Rain", "Fall", "Tail", "Song"), List.copyOf(song.phrases().keySet()));
    assertEquals(
        List.of(new Step.Say("Song", 2, 4, 1), new Step.Say("Song", 1, 5, 1)), song.plan());
    // 8 + 8 + 3 * 6 + 4 + 29 matras
    assertEquals(Ratio.of(67), Performance.of(song).rounds().get(0).matras());
  }
}
