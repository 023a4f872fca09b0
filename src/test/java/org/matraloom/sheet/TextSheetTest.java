package org.matraloom.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.RandomScores;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.script.Script;

/** The text of a sheet is a score that says the same at the same places. */
class TextSheetTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  @Test
  void everySampleReadsBackAsItIsPerformed() throws IOException {
    int seen = 0;
    for (Path sample : Sheets.samples()) {
      Composition composition = Sheets.read(sample);
      for (SheetOptions.Lines lines : SheetOptions.Lines.values()) {
        assertReadsBack(composition, lines, text -> text);
        seen++;
      }
    }
    assertTrue(seen >= 16, "samples were read back: " + seen);
  }

  @Test
  void scoresOfEveryKindReadBack() throws IOException {
    RandomScores scores = new RandomScores(77);
    for (int count = 0; count < 200; count++) {
      Composition composition = scores.composition();
      assertReadsBack(composition, SheetOptions.Lines.AVARTANA, text -> text);
      assertReadsBack(composition, SheetOptions.Lines.PHRASE, text -> text);
    }
  }

  @Test
  void aMessageMayLoseSpacesAndBlankLines() throws IOException {
    for (Path sample : Sheets.samples()) {
      assertReadsBack(
          Sheets.read(sample),
          SheetOptions.Lines.AVARTANA,
          text ->
              text.lines()
                  .map(line -> line.strip().replaceAll("[ \t]+", " "))
                  .filter(line -> !line.isEmpty())
                  .collect(Collectors.joining("\n")));
    }
  }

  @Test
  void someRoundsAloneReadBackAtTheirPlace() throws IOException {
    Composition korvai = Sheets.sample("monsoon-ledger");
    Performance last = Performance.of(korvai).onlyRounds(2, 3);
    Sheet sheet = Sheets.of(last, Script.LATIN, SheetOptions.Lines.AVARTANA);
    Composition again = read(textOf(sheet));
    assertEquals("20", last.startBeat().toString());
    assertEquals("4", again.startBeat().toString());
    assertEquals(said(last).size(), said(Performance.of(again)).size());
  }

  @Test
  void otherScriptsStandBesideTheRomanLineAndDoNotDisturbIt() throws IOException {
    Composition korvai = Sheets.sample("gutter-song");
    Performance performance = Performance.of(korvai);
    for (Script script : Script.values()) {
      String text = textOf(Sheets.of(performance, script, SheetOptions.Lines.AVARTANA));
      assertEquals(said(performance), said(Performance.of(read(text))), script.word());
    }
  }

  @Test
  void aRowStandsUnderItsKriyas() throws IOException {
    Composition small =
        Sheets.score("title Puddle\ntala 2+1\ntempo 60\nA = takita , [takadimi] . jam\n");
    assertEquals(
        """
        title   Puddle
        tala    2+1
        kalai   1
        tempo   60
        start   samam
        eduppu  samam

        # Tala 2+1 (2+1), 3 beats; tempo 60 beats a minute. From samam; eduppu samam.

        # Round 1, chatusra nadai (4)
        #       clap                  hold                  clap
        A1    = ta ki ta ,            [ta ka di mi] . jam |   # 8

        Round1 = A1

        perform
        Round1 nadai 4

        # 8 matras; 2 beats.
        # Misses: the last matra ends on beat 3, 4 matras too early for samam.
        """,
        textOf(Sheets.plain(small)));
  }

  private interface Journey {
    String through(String text);
  }

  private static void assertReadsBack(
      Composition composition, SheetOptions.Lines lines, Journey journey) throws IOException {
    Performance performance = Performance.of(composition);
    String text = journey.through(textOf(Sheets.of(performance, Script.LATIN, lines)));
    Performance again = Performance.of(read(text));
    assertEquals(said(performance), said(again), text);
    assertEquals(performance.endBeat(), again.endBeat(), text);
    assertEquals(composition.eduppuBeat(), again.composition().eduppuBeat(), text);
    assertEquals(composition.tempo(), again.composition().tempo(), text);
    assertEquals(composition.avartana().kriyas(), again.composition().avartana().kriyas(), text);
  }

  private static String textOf(Sheet sheet) throws IOException {
    StringBuilder text = new StringBuilder();
    TextSheet.write(sheet, LEXICON, text);
    return text.toString();
  }

  private static Composition read(String text) {
    Reading reading = ScoreReader.read(text, "sheet.txt", LEXICON);
    return reading
        .composition()
        .orElseThrow(() -> new AssertionError(reading.format() + "\n" + text));
  }

  /** What is said: place, length, sound and round of every sollu. */
  private static List<String> said(Performance performance) {
    List<String> said = new ArrayList<>();
    for (Event event : ScoreTimeline.of(performance, 0)) {
      if (event instanceof Event.SolluSaid sollu) {
        said.add(
            sollu.beat()
                + " "
                + sollu.beats()
                + " "
                + sollu.sollu().sound()
                + " round "
                + sollu.round());
      }
    }
    return said;
  }
}
