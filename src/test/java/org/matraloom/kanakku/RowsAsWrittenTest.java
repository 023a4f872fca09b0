package org.matraloom.kanakku;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.Unrolled;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/** The rows of a round cut by the beat name what the score says, where it says it. */
class RowsAsWrittenTest {

  @Test
  void rowsNameTheSameSollusAtTheSameMatras() {
    int marks = 0;
    for (Composition composition : Unrolled.scores()) {
      Performance performance = Performance.of(composition);
      List<Unrolled.Piece> said = Unrolled.of(performance);
      for (Span.Round round : performance.rounds()) {
        List<String> shown =
            BeatRow.of(round, performance).stream()
                .flatMap(row -> row.marks().stream())
                .filter(mark -> !mark.equals("-"))
                .toList();
        assertEquals(marks(round, said), shown);
        marks += shown.size();
      }
    }
    assertTrue(marks > 20_000, "marks were compared: " + marks);
  }

  /** A mark a matra of the round, as the reader of a row expects it. */
  private static List<String> marks(Span.Round round, List<Unrolled.Piece> said) {
    List<String> marks = new ArrayList<>();
    Ratio matra = Ratio.of(1, round.matrasPerBeat());
    int first = 0;
    for (Ratio at = round.startBeat(); at.compareTo(round.endBeat()) < 0; at = at.plus(matra)) {
      Ratio from = at;
      while (said.get(first).end().compareTo(from) <= 0) {
        first++;
      }
      Ratio to = from.plus(matra).min(round.endBeat());
      List<Unrolled.Piece> begun =
          said.subList(first, said.size()).stream()
              .takeWhile(piece -> piece.beat().compareTo(to) < 0)
              .filter(piece -> !piece.name().equals(".") && piece.beat().compareTo(from) >= 0)
              .toList();
      if (begun.isEmpty()) {
        marks.add(said.get(first).name().equals(".") ? "." : ",");
      } else {
        String words = String.join(" ", begun.stream().map(Unrolled.Piece::name).toList());
        boolean plain = begun.size() == 1 && begun.get(0).beat().equals(from);
        marks.add(plain ? words : "[" + words + "]");
      }
    }
    return marks;
  }
}
