package org.matraloom.app.hear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidAs;
import org.matraloom.follow.SaidSollu;
import org.matraloom.log.PlaceNote;
import org.matraloom.log.ScorePlace;
import org.matraloom.measure.BreathFindings;
import org.matraloom.measure.SaidNadaiChange;
import org.matraloom.measure.TakeFindings;

class TakePlaceNotesTest {

  private static TakeFindings findings(
      List<ExpectedSollu> asked, List<SaidSollu> said, List<SaidNadaiChange> changes) {
    return new TakeFindings(
        new Alignment(asked, List.of(), List.of()),
        said,
        Optional.empty(),
        List.of(),
        new TakeFindings.Nadais(List.of(), changes, List.of()),
        Optional.empty(),
        new BreathFindings(0, 0, 0, 0, List.of()),
        Optional.empty());
  }

  private static PlaceNote note(ScorePlace.Kind kind, int round, String name, double off) {
    return new PlaceNote(new ScorePlace(kind, round, name), off);
  }

  /**
   * The first beat of five is 0.04 beats late, 30 ms at 0.75 s a beat; of the forty sollus of Five
   * only those five are. A ratio of 1.2 where 1.25 is asked is 4 % slow. All of Four is 0.02 beats
   * early, 15 ms.
   */
  @Test
  void changesAndPhrasesAreKept() {
    List<ExpectedSollu> asked = SaidAs.expected(SaidAs.FOUR_AND_FIVE);
    List<SaidSollu> said =
        SaidAs.moved(asked, beat -> beat < 8 ? beat - 0.02 : beat < 9 ? beat + 0.04 : beat);
    SaidNadaiChange change = new SaidNadaiChange(32, 2, 4, 5, 1.2, OptionalInt.empty());
    assertEquals(
        List.of(
            note(ScorePlace.Kind.INTO, 2, "4>5", 30),
            note(ScorePlace.Kind.SPEED, 2, "4>5", -4),
            note(ScorePlace.Kind.PHRASE, 1, "Four", -15),
            note(ScorePlace.Kind.PHRASE, 2, "Five", 0)),
        TakePlaceNotes.of(findings(asked, said, List.of(change))));
    List<SaidSollu> withoutFirstBeat =
        said.stream().filter(sollu -> sollu.place() < 33 || sollu.place() > 36).toList();
    assertEquals(3, TakePlaceNotes.of(findings(asked, withoutFirstBeat, List.of(change))).size());
    assertEquals(List.of(), TakePlaceNotes.of(findings(asked, said.subList(0, 2), List.of())));
  }

  @Test
  void aLongPieceKeepsTheFirstPlaces() {
    List<ExpectedSollu> asked =
        SaidAs.expected(SaidAs.FOUR_AND_FIVE.replace("Four nadai 4", "Four x100 nadai 4"));
    assertTrue(IntStream.range(0, asked.size()).anyMatch(k -> asked.get(k).round() == 101));
    List<PlaceNote> notes = TakePlaceNotes.of(findings(asked, SaidAs.even(asked), List.of()));
    assertEquals(PlaceNote.MOST, notes.size());
    assertEquals(64, notes.get(63).place().round());
  }
}
