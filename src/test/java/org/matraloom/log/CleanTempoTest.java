package org.matraloom.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CleanTempoTest {

  @Test
  void theWholeComesFirstThenEveryRound() {
    History history = new History(List.of(Entries.numbered(1), Entries.numbered(3)), List.of());
    List<CleanTempo> rows = CleanTempo.of(history, Entries.PIECE);
    assertEquals(List.of(0, 1, 2), rows.stream().map(CleanTempo::round).toList());
    assertEquals(
        List.of(61.0, 63.0), rows.get(0).points().stream().map(CleanTempo.Point::tempo).toList());
    assertEquals(
        List.of(true, false), rows.get(2).points().stream().map(CleanTempo.Point::clean).toList());
    assertEquals(5, rows.get(2).points().get(0).nadai());
  }

  @Test
  void ofADayTheFastestCleanTakeCounts() {
    History history =
        new History(
            List.of(
                Entries.take(Entries.EVENING, 60, true),
                Entries.take(Entries.EVENING.plusMinutes(1), 64, true),
                Entries.take(Entries.EVENING.plusMinutes(2), 70, false),
                Entries.take(Entries.EVENING.plusDays(1), 70, false)),
            List.of());
    CleanTempo whole = CleanTempo.of(history, Entries.PIECE).get(0);
    assertEquals(2, whole.days().size());
    assertEquals(OptionalDouble.of(64), whole.fastestClean(whole.days().get(0)));
    assertEquals(3, whole.takes(whole.days().get(0)));
    assertEquals(OptionalDouble.empty(), whole.fastestClean(whole.days().get(1)));
  }

  @Test
  void notesWithoutAVerdictAreNoTakes() {
    History history = new History(List.of(Entries.voiced(Entries.EVENING, 5)), List.of());
    assertEquals(List.of(), CleanTempo.of(history, Entries.PIECE).get(0).points());
  }
}
