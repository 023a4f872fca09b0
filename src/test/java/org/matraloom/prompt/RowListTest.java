package org.matraloom.prompt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;

/** The rows that are asked for. */
class RowListTest {

  private static final Lexicon LEXICON = Lexicon.standard();
  private static final RowList LIST = new RowList(LEXICON);

  private static Map<String, Integer> counted(List<AskedRow> rows) {
    Map<String, Integer> counts = new HashMap<>();
    for (AskedRow row : rows) {
      row.places().forEach(place -> counts.merge(place.sound(), 1, Integer::sum));
    }
    return counts;
  }

  private static Composition score(String phrase) {
    String text = "tala 4\ntempo 60\nSong = " + phrase + "\nperform\n  Song nadai 4\n";
    return ScoreReader.read(text, "", LEXICON).composition().orElseThrow();
  }

  @Test
  void theCommonSollusTakeTenMinutesAtMost() {
    List<AskedRow> rows = LIST.common();
    Map<String, Integer> counts = counted(rows);
    // Of the words that David Nelson (Solkattu Manual, 2014) gives for groups, in plain spelling,
    // and of ta dhi tom nam: common practice.
    Set<String> usual =
        Set.of("ta", "ka", "di", "mi", "ki", "ṭa", "gi", "ṇa", "tom", "jo", "ṇu", "dhi", "nam");
    assertTrue(counts.keySet().containsAll(usual), counts.toString());
    assertTrue(counts.size() >= 35, counts.size() + " sollus: " + counts);
    double seconds = RowList.seconds(rows.size(), rows.size() * Asking.TAKES);
    assertTrue(seconds <= 600, seconds + " s for " + rows.size() + " rows");
    // Two rows by hand: 2 * 5 avartanas of 4 beats at 75, and 1.5 s after each.
    assertEquals(2 * 5 * 4 * 60.0 / 75 + 3, RowList.seconds(2, 6), 1e-9);
  }

  @Test
  void everySolluIsAskedForInWordsOrAloneAndAloneInAnyCase() {
    List<AskedRow> rows = LIST.common();
    assertEquals(
        10, rows.stream().filter(row -> !isApart(row)).count(), "all rows of words are read");
    List<AskedRow> alone = rows.stream().filter(RowListTest::isApart).toList();
    assertEquals(counted(rows).keySet(), counted(alone).keySet());
  }

  /** Each sollu of the row has two matras or more. */
  private static boolean isApart(AskedRow row) {
    for (int i = 1; i < row.places().size(); i++) {
      if (row.places().get(i).seconds() - row.places().get(i - 1).seconds() < 0.79) {
        return false;
      }
    }
    return true;
  }

  @Test
  void aRowTellsWhenEachSolluIsDue() {
    AskedRow row = AskedRow.of("takita , . tom , .", LEXICON).orElseThrow();
    assertEquals("takita tom", row.words());
    assertEquals(
        List.of(
            new AskedRow.DueSollu("ta", 0),
            new AskedRow.DueSollu("ki", 0.4),
            new AskedRow.DueSollu("ṭa", 0.8),
            new AskedRow.DueSollu("tom", 2.0)),
        row.places());
    assertEquals(6.4, AskedRow.sayBegins(0), 1e-9);
    assertTrue(AskedRow.of("takadimi", LEXICON).isEmpty(), "too short");
    assertTrue(AskedRow.of(". . . . . . . .", LEXICON).isEmpty(), "nothing is said");
    assertTrue(AskedRow.of("takaxx , , , ,", LEXICON).isEmpty(), "no sollus");
  }

  @Test
  void thePieceOfARowIsHeardOnceAndThenSilent() {
    AskedRow row = AskedRow.of("takadimi tam , , .", LEXICON).orElseThrow();
    Performance performance = Performance.of(row.piece(3, LEXICON));
    assertEquals(5, performance.spoken().count());
    assertEquals(16, performance.endBeat().toDouble(), "four avartanas of four beats");
  }

  @Test
  void ofAScoreOnlyItsOwnSollusAreAskedFor() {
    List<AskedRow> rows = LIST.of(List.of(score("takadimi dha lan gu , ta la tam")));
    assertEquals(
        Set.of("ta", "ka", "di", "mi", "dha", "lan", "gu", "la", "tam"), counted(rows).keySet());
    assertTrue(rows.stream().anyMatch(row -> row.words().equals("takadimi tam")), rows.toString());
    assertTrue(rows.stream().anyMatch(row -> row.words().contains("dha lan gu")), rows.toString());
    counted(rows).forEach((sollu, count) -> assertTrue(count >= 2, sollu + " in words and alone"));
  }

  @Test
  void whatCompanyChangesIsAskedForAsItIsSaid() {
    assertEquals(Set.of("ta", "ki", "ṭa"), counted(LIST.of(List.of(score("takita")))).keySet());
  }
}
