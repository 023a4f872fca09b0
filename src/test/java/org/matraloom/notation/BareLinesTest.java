package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/** A text that is nothing but sollus is a piece. */
class BareLinesTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  private static Reading read(String text) {
    return ScoreReader.read(text, "bare", LEXICON);
  }

  private static Composition piece(String text) {
    Reading reading = read(text);
    return reading.composition().orElseThrow(() -> new AssertionError(reading.format()));
  }

  @Test
  void oneLineIsASongInAdiSaidOnce() {
    Composition piece = piece("takadimi takajunu takita tom , ,\n");
    assertEquals("adi", piece.avartana().tala().name());
    assertEquals(Ratio.of(60), piece.tempo().beatsPerMinute());
    assertEquals(List.of("Song"), List.copyOf(piece.phrases().keySet()));
    assertEquals(Ratio.of(14), Performance.of(piece).rounds().get(0).matras());
    assertEquals(1, Performance.of(piece).rounds().size());
  }

  @Test
  void itIsSaidWhatIsTakenForGranted() {
    List<Problem> told = read("takita").problems();
    assertEquals(1, told.size());
    assertTrue(
        told.get(0).message().contains("taken as a piece in adi at 60 beats a minute, said once"),
        told.get(0)::message);
    String known = read("tala rupaka\ntempo 72\ntakita").problems().get(0).message();
    assertTrue(known.contains("taken as a piece, said once"), known);
  }

  @Test
  void severalLinesArePhrasesOneAfterAnother() {
    Composition piece = piece("tala rupaka\ntakita tom , ,\ntakadimi\n  takita tom , ,\n5(1)5\n");
    assertEquals(List.of("Line1", "Line2", "Line3", "Song"), List.copyOf(piece.phrases().keySet()));
    assertEquals(Ratio.of(6 + 10 + 11), Performance.of(piece).rounds().get(0).matras());
  }

  @Test
  void aChangeIsWrittenIntoTheTextInFull() {
    String text = "# rain\ntakita tom , ,\ntakadimi tom\n";
    String changed = ScoreEditor.apply(text, List.of(new Edit.Start(Ratio.of(4))), LEXICON);
    assertEquals(
        "# rain\ntala adi\nstart beat 5\n\nLine1 = takita tom , ,\nLine2 = takadimi tom\n"
            + "Song = Line1 Line2\n",
        changed);
    assertEquals(piece(text).phrases(), piece(changed).phrases());
    assertEquals("", read(changed).format());
  }

  @Test
  void dashesLowLinesAndSlashesAreTakenAsPeopleWriteThem() {
    Composition typed = piece("tala adi\nSong = takita - - tom _ \u2013 / ta //\n");
    Composition meant = piece("tala adi\nSong = takita , , tom , , | ta ||\n");
    assertEquals(
        RandomScores.withoutPlaces(meant).phrases(), RandomScores.withoutPlaces(typed).phrases());
    List<Problem> told = read("tala adi\nSong = ta - ta - ta\n").problems();
    assertEquals(1, told.size(), "a dash is told of once");
    assertEquals(Problem.Severity.WARNING, told.get(0).severity());
  }
}
