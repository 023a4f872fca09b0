package org.matraloom.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.RandomScores;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.script.Script;
import org.matraloom.time.Ratio;

/** The marks of a sheet against the events of the same performance. */
class MarksTest {

  @Test
  void marksFillTheTimeAndSayWhatTheEventsSay() {
    RandomScores scores = new RandomScores(11);
    int sollus = 0;
    for (int count = 0; count < 300; count++) {
      Performance performance = Performance.of(scores.composition());
      List<Mark> marks = MarkReader.read(performance, List.of()).marks();
      Ratio reached = performance.startBeat();
      for (Mark mark : marks) {
        assertEquals(reached, mark.beat(), "no gap and no overlap");
        reached = mark.endBeat();
      }
      assertEquals(performance.soundEndBeat(), reached);
      List<String> said = said(marks);
      assertEquals(saidByEvents(performance), said);
      sollus += said.size();
    }
    assertTrue(sollus > 10_000, "sollus were compared: " + sollus);
  }

  /** Place and length of every sollu, karvai included. */
  private static List<String> said(List<Mark> marks) {
    List<String> said = new ArrayList<>();
    for (int index = 0; index < marks.size(); index++) {
      if (marks.get(index) instanceof Mark.Said sollu) {
        int next = index + 1;
        while (next < marks.size() && marks.get(next) instanceof Mark.Karvai) {
          next++;
        }
        Ratio end = marks.get(next - 1).endBeat();
        said.add(sollu.beat() + " " + end.minus(sollu.beat()) + " " + sollu.sollu().spelling());
      }
    }
    return said;
  }

  private static List<String> saidByEvents(Performance performance) {
    List<String> said = new ArrayList<>();
    for (Event event : ScoreTimeline.of(performance, 0)) {
      if (event instanceof Event.SolluSaid sollu) {
        said.add(sollu.beat() + " " + sollu.beats() + " " + sollu.sollu().spelling());
      }
    }
    return said;
  }

  @Test
  void rowsKeepEveryMarkAndSumsAddUp() {
    RandomScores scores = new RandomScores(12);
    for (int count = 0; count < 100; count++) {
      Composition composition = scores.composition();
      Performance performance = Performance.of(composition);
      List<Mark> marks = MarkReader.read(performance, List.of()).marks();
      for (SheetOptions.Lines lines : SheetOptions.Lines.values()) {
        Sheet sheet = Sheets.of(performance, Script.LATIN, lines);
        assertEquals(marks.size(), Sheets.marks(sheet).size(), lines.toString());
        for (Span.Round round : performance.rounds()) {
          Ratio sum =
              sheet.rows().stream()
                  .flatMap(row -> row.parts().stream())
                  .filter(part -> part.round() == round.number())
                  .map(RoundPart::matras)
                  .reduce(Ratio.ZERO, Ratio::plus);
          assertEquals(round.matras(), sum, "round " + round.number());
        }
      }
    }
  }

  @Test
  void fasterMarksAreWrittenFaster() {
    Composition fast = Sheets.score("tala adi\ntempo 60\nA = ta [ka di] [[mi ta ka ta]] , 2*3 .\n");
    List<Mark> marks = MarkReader.read(Performance.of(fast), List.of()).marks();
    assertEquals(
        List.of(1, 2, 2, 4, 4, 4, 4, 1, 1, 1, 1, 1, 1, 1, 1),
        marks.stream().map(Mark::speed).toList());
    assertEquals(
        "SSSSSSSKSKKSKKQ",
        marks.stream()
            .map(mark -> mark instanceof Mark.Said ? "S" : mark instanceof Mark.Karvai ? "K" : "Q")
            .reduce("", String::concat));
  }
}
