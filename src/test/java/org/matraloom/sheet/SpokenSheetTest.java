package org.matraloom.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;

/** The sheet in sentences, the cues, and a round in two nadais. */
class SpokenSheetTest {

  @Test
  void everyBeatIsASentence() throws IOException {
    Composition small =
        Sheets.score(
            "title Puddle\ntala 2+1\ntempo 60\nA = takita , [takadimi] . jam ; , [[takadimi]]\n");
    StringBuilder text = new StringBuilder();
    ReadAloud.write(Sheets.plain(small), text);
    assertEquals(
        """
        Puddle.
        Tala 2+1 (2+1), 3 beats; tempo 60 beats a minute.
        From samam; eduppu samam.

        Round 1, chatusra nadai (4).
        Avartana 1.
        Beat 1, clap: ta ki ta; rings 1 matra.
        Beat 2, hold: twice as fast: ta ka di mi; silent 1 matra; jam.
        Beat 3, clap: rings 3 matras; 4 times as fast: ta ka di mi.
        Round 1: 12 matras, 12 of 12.

        12 matras; 3 beats = 1 avartana.
        Lands: the last matra ends on samam.
        """,
        text.toString());
  }

  /** A breath in the karvai of tom is told before the ta that follows in the same beat. */
  @Test
  void aBreathIsToldWhereItIsTaken() throws IOException {
    Composition delta =
        Sheets.score(
            """
            tala adi
            tempo 72
            Silt  = takadimi takajunu takita tadiginatom
            Mouth = takadimi tadiginatom , ,
            Delta = ta , di , gi , na tom
            Song  = Silt Mouth Delta Silt Mouth Delta
            """);
    StringBuilder text = new StringBuilder();
    ReadAloud.write(Sheets.plain(delta), text);
    assertTrue(text.toString().contains(": tom; rings 2 matras; breathe; ta."), text.toString());
    int breaths = 0;
    for (Path sample : Sheets.samples()) {
      Performance performance = Performance.of(Sheets.read(sample));
      StringBuilder spoken = new StringBuilder();
      ReadAloud.write(Sheets.plain(performance.composition()), spoken);
      int told = spoken.toString().split("breathe[;.]", -1).length - 1;
      assertEquals(Sheets.breaths(performance).size(), told, sample.toString());
      breaths += told;
    }
    assertTrue(breaths > 50, "breaths were told: " + breaths);
  }

  /** Round 1 from beat 4 1/2, round 2 from beat 6 3/4: each is told inside its beat. */
  @Test
  void aRoundIsToldWhereItBegins() throws IOException {
    StringBuilder text = new StringBuilder();
    Path heron = Path.of("src/test/resources/org/matraloom/pieces/late-heron.loom");
    ReadAloud.write(Sheets.plain(Sheets.read(heron)), text);
    String spoken = text.toString();
    assertTrue(
        spoken.contains("Beat 4, middle finger: round 1 begins on beat 4 1/2; ta ka."), spoken);
    assertTrue(
        spoken.contains("Beat 6, wave: gi na tom; round 2 begins on beat 6 3/4; ta."), spoken);
    StringBuilder stairs = new StringBuilder();
    Path file = Path.of("src/test/resources/org/matraloom/pieces/heron-stairs.loom");
    ReadAloud.write(Sheets.plain(Sheets.read(file)), stairs);
    assertTrue(stairs.toString().contains("Beat 5, clap: round 2 begins; ta ka di mi."));
    assertEquals(1, stairs.toString().split(" begins").length - 1, "the others begin their rows");
  }

  @Test
  void nothingIsLeftToColumnsOrSigns() throws IOException {
    StringBuilder text = new StringBuilder();
    ReadAloud.write(Sheets.plain(Sheets.sample("monsoon-ledger")), text);
    assertFalse(text.toString().matches("(?s).*[|\\[\\]{}#].*"));
    assertEquals(56, text.toString().lines().filter(line -> line.startsWith("Beat ")).count());
  }

  @Test
  void cuesTellWhatFallsOnEachKriya() {
    Composition small = Sheets.score("tala adi\ntempo 60\nA = takita , , kita . ta dhim ; ,\n");
    List<Row> rows = CueMap.rows(Sheets.plain(small));
    List<String> cues =
        rows.get(0).cells().stream()
            .map(cell -> cell.marks().isEmpty() ? "" : ((Mark.Said) cell.marks().get(0)).text())
            .toList();
    assertEquals(List.of("ta", "(ta)", "ta", "(dhim)", "", "", "", ""), cues.subList(0, 8));
  }

  /** 7 + 6 + 5 = 18 matras are 4 1/2 beats in four and 3 3/5 in five, by division. */
  @Test
  void aRoundInAnotherNadaiKeepsItsSollusAndMovesItsEnd() throws IOException {
    Composition groups = Sheets.score("title Reeds\ntala adi\ntempo 60\nA = 7 6 5\n");
    Span.Round round = Performance.of(groups).rounds().get(0);
    SheetOptions options = Sheets.plain(groups).options();
    Rebar both = Rebar.of(round, groups, 5, options);
    assertEquals("9/2", both.before().performance().endBeat().toString());
    assertEquals("18/5", both.after().performance().endBeat().toString());
    assertEquals(words(both.before()), words(both.after()));
    StringBuilder text = new StringBuilder();
    both.write(text);
    assertTrue(
        text.toString().contains("Beat 1, clap           | ta ka di mi  | ta ka di mi ta\n"));
    assertTrue(
        text.toString()
            .replaceAll("\\s+", " ")
            .contains(
                "In khanda nadai (5): 18 matras are 3 3/5 beats, from samam to beat 4 3/5;"
                    + " on the claps: ta."),
        text.toString());
    assertEquals(2, both.together().rows().size());
  }

  private static List<String> words(Sheet sheet) {
    return Sheets.marks(sheet).stream()
        .filter(Mark.Said.class::isInstance)
        .map(mark -> ((Mark.Said) mark).text())
        .toList();
  }
}
