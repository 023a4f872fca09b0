package org.matraloom.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.paper.Drawn;
import org.matraloom.picture.Typeface;
import org.matraloom.score.Avartana;
import org.matraloom.score.FingerCustom;
import org.matraloom.spell.TalaReader;

/** Where rows break: a laghu is 4 or 2 and 2, never 3 and 1 (common practice of written pages). */
class LineBreaksTest {

  private static Avartana avartana(String tala, int kalai) {
    return Avartana.of(TalaReader.read(tala).tala().orElseThrow(), kalai, FingerCustom.RESTART);
  }

  @ParameterizedTest
  @CsvSource({
    // tala, kalai, beats that fit a line, where lines begin
    "adi, 1, 8, 0",
    "adi, 1, 5, 0 4",
    "adi, 1, 4, 0 4",
    "adi, 1, 3, 0 2 4 6",
    "adi, 1, 2, 0 2 4 6",
    "adi, 2, 3, 0 2 4 6 8 10 12 14",
    "adi, 2, 6, 0 4 8 12",
    "adi, 2, 8, 0 8",
    "adi, 4, 9, 0 8 16 24",
    "rupaka, 1, 4, 0 2",
    "rupaka, 1, 3, 0 2 4",
    "misra chapu, 1, 4, 0 3",
    "khanda triputa, 1, 4, 0 3 5",
    "misra jhampa, 1, 4, 0 4 7"
  })
  void angasStayWholeOrInPairs(String tala, int kalai, int fits, String starts) {
    List<Integer> broken = LineBreaks.of(avartana(tala, kalai), fits).starts();
    assertEquals(starts, String.join(" ", broken.stream().map(String::valueOf).toList()));
  }

  /** A dense avartana does not make the plain ones before it long. */
  @Test
  void everyRowDecidesForItself() {
    String plain = "Song = (takadimi) x16";
    String dense = " [[takadimi takajunu takadimi takajunu]] (takadimi) x7";
    Sheet without = Sheets.plain(Sheets.score("tala adi\n" + plain + "\n"));
    Sheet with = Sheets.plain(Sheets.score("tala adi\n" + plain + dense + "\n"));
    assertEquals(2, without.rows().size());
    assertEquals(3, with.rows().size());
    assertEquals(linesOf(without, 2), linesOf(with, 2));
    assertTrue(linesOf(with, 3) > linesOf(with, 2));
  }

  /** How many lines the first rows of a page take: bars of different heights at the left edge. */
  private static long linesOf(Sheet sheet, int rows) {
    Sheet first =
        new Sheet(
            sheet.performance(), sheet.options(), sheet.rows().subList(0, rows), List.of("."));
    return PageSetter.set(first, new Typeface()).stream()
        .flatMap(List::stream)
        .filter(Drawn.Rule.class::isInstance)
        .map(Drawn.Rule.class::cast)
        .filter(rule -> rule.x1() == rule.x2())
        .mapToLong(rule -> Math.round(rule.y1()))
        .distinct()
        .count();
  }

  @Test
  void readAloudABreathComesAfterItsSound() throws IOException {
    StringBuilder text = new StringBuilder();
    ReadAloud.write(Sheets.plain(Sheets.sample("gutter-song")), text);
    assertTrue(text.toString().contains("tom; breathe."), text::toString);
    assertEquals(-1, text.indexOf("breathe; breathe"));
  }
}
