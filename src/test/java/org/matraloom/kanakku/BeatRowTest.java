package org.matraloom.kanakku;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

class BeatRowTest {

  private static final Sequence SEVEN_SIX_FIVE =
      Sequence.of(Pieces.group(7, 0), Pieces.group(6, 0), Pieces.group(5, 0));

  /** 18 matras are four and a half beats in 4 and three and three fifths in 5 (derived). */
  @Test
  void theSamePhraseAgainstTheClapsInFourAndInFive() {
    List<BeatRow> four = rows(SEVEN_SIX_FIVE, 4);
    List<BeatRow> five = rows(SEVEN_SIX_FIVE, 5);
    assertEquals(List.of(4, 4, 4, 4, 2), four.stream().map(row -> row.sollus().size()).toList());
    assertEquals(List.of(5, 5, 5, 3), five.stream().map(row -> row.sollus().size()).toList());
    assertEquals(said(four), said(five), "nothing is lost or added");
    assertEquals(List.of(0, 4, 8, 12, 16), four.stream().map(row -> indexOf(row, four)).toList());
    assertEquals(List.of(0, 5, 10, 15), five.stream().map(row -> indexOf(row, five)).toList());
    assertTrue(four.stream().allMatch(BeatRow::begins));
    assertEquals("clap", four.get(0).kriya().words());
    assertEquals("little finger", four.get(1).kriya().words());
    assertTrue(four.get(0).samam());
  }

  @Test
  void aKarvaiRingsOverTheBeat() {
    Sequence phrase =
        Sequence.of(Pieces.word(3), new Element.Karvai(2), new Element.Silence(), Pieces.word(3));
    List<BeatRow> rows = rows(phrase, 4);
    assertEquals(3, rows.size());
    assertTrue(rows.get(1).onTheBeat().isPresent());
    assertFalse(rows.get(1).begins(), "the karvai of the third sollu rings on");
    assertEquals(2, rows.get(1).sollus().size());
    assertTrue(rows.get(2).begins());
    assertEquals(",", rows.get(1).marks().get(0), "one matra of the karvai lies in this beat");
    assertEquals(".", rows.get(1).marks().get(1));
    rows.subList(0, 2).forEach(row -> assertEquals(4, row.marks().size()));
    assertEquals(List.of("-", "-", "-"), rows.get(2).marks().subList(1, 4));
    List<BeatRow> silent =
        rows(Sequence.of(Pieces.word(4), new Element.Silence(), Pieces.word(3)), 4);
    assertTrue(silent.get(1).onTheBeat().isEmpty());
  }

  @Test
  void aRoundMayBeginInsideABeat() {
    Composition piece = Pieces.said(Cycles.ADI, SEVEN_SIX_FIVE, 4, 5);
    Performance performance = Performance.of(piece);
    Span.Round second = performance.rounds().get(1);
    List<BeatRow> rows = BeatRow.of(second, performance);
    assertEquals(4, rows.get(0).beat());
    assertTrue(rows.get(0).onTheBeat().isEmpty(), "the second round begins half a beat later");
    assertEquals(3, rows.get(0).sollus().size());
    assertEquals("-", rows.get(0).marks().get(0), "half a beat before the round");
    assertEquals(Ratio.of(9, 2), second.startBeat());
    assertEquals(18, said(rows).size());
  }

  private static List<BeatRow> rows(Sequence phrase, int nadai) {
    Composition piece = Pieces.said(Cycles.ADI, phrase, nadai);
    Performance performance = Performance.of(piece);
    return BeatRow.of(performance.rounds().get(0), performance);
  }

  private static List<Sollu> said(List<BeatRow> rows) {
    List<Sollu> said = new ArrayList<>();
    rows.forEach(row -> said.addAll(row.sollus()));
    return said;
  }

  private static int indexOf(BeatRow row, List<BeatRow> rows) {
    return rows.subList(0, rows.indexOf(row)).stream().mapToInt(r -> r.sollus().size()).sum();
  }
}
