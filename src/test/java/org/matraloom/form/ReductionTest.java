package org.matraloom.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ReductionTest {

  /**
   * Published variants: all five lines make 100, three make 60, and 6 4 3 2 makes 75 (rasikas.org,
   * "Structuring a Korvai in the thani", p=380684).
   */
  @Test
  void fiveSollusHeldFromSixToTwo() {
    Map<String, Integer> totals =
        Reduction.all(5, 6, 2).stream()
            .collect(Collectors.toMap(Reduction::written, Reduction::matras));
    assertEquals(8, totals.size());
    assertEquals(100, totals.get("5*6 5*5 5*4 5*3 5*2"));
    assertEquals(60, totals.get("5*6 5*4 5*2"));
    assertEquals(75, totals.get("5*6 5*4 5*3 5*2"));
  }

  @Test
  void aReductionShrinksAndItsReverseGrows() {
    for (Reduction reduction : Reduction.all(7, 9, 1)) {
      if (reduction.holds().size() > 2) {
        assertEquals(Yati.GOPUCCHA, Yati.ofMatras(reduction.lines()));
        assertEquals(Yati.SROTOVAHA, Yati.ofMatras(reduction.reversed().lines()));
      }
      assertEquals(reduction.matras(), reduction.reversed().matras());
    }
  }

  @Test
  void sollusAreDroppedFromEitherEnd() {
    List<String> phrase = List.of("ta", "di", "gi", "na", "tom");
    assertEquals(
        List.of(phrase, List.of("gi", "na", "tom"), List.of("tom")),
        Reduction.dropping(phrase, 2, true));
    assertEquals(List.of(phrase, List.of("ta", "di")), Reduction.dropping(phrase, 3, false));
  }

  @Test
  void wrongHoldsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> Reduction.all(5, 2, 6));
    assertThrows(IllegalArgumentException.class, () -> Reduction.all(5, 13, 2));
  }

  /** 24 + 75 + 29 = 128, or 24 + 74 + 30 with one matra moved (rasikas.org, p=380684). */
  @Test
  void fillsTwoLongAvartanas() {
    GivenPurvanga filling = new GivenPurvanga(128, List.of(24, 75));
    assertEquals(29, filling.left());
    Map<String, String> sums =
        Endings.all(filling.left()).stream()
            .collect(
                Collectors.toMap(e -> e.written() + " borrowed " + e.borrowed(), filling::sum));
    assertEquals("24 + 75 + 29 = 128", sums.get("9(1)9(1)9 borrowed 0"));
    assertEquals("24 + 75 + 29 = 128", sums.get("7(4)7(4)7 borrowed 0"));
    assertEquals("24 + 74 + 30 = 128", sums.get("10 10 10 borrowed 1"));
    assertEquals("24 + 76 + 28 = 128", sums.get("8(2)8(2)8 borrowed -1"));
    Ending other = Endings.equal(30).get(0);
    assertThrows(IllegalArgumentException.class, () -> filling.sum(other));
    assertTrue(sums.size() > 30);
  }
}
