package org.matraloom.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.matraloom.time.Tempo;

class EndingsTest {

  /** Derived: 3S + 2G with S at least 1 gives every number from 3 on except 4. */
  @Test
  void everyLengthFromThreeOnExceptFourHasAnEqualForm() {
    for (int matras = 0; matras <= 500; matras++) {
      List<Ending> endings = Endings.equal(matras);
      assertEquals(matras >= 3 && matras != 4, !endings.isEmpty(), "length " + matras);
      if (!endings.isEmpty()) {
        int leastGap = matras % 3 * 2 % 3;
        assertEquals(leastGap, endings.get(0).karvais().get(0), "least gap of " + matras);
      }
    }
  }

  @Test
  void bruteForceFindsTheSameForms() {
    for (int matras = 1; matras <= 60; matras++) {
      Set<String> found = new TreeSet<>();
      for (Ending ending : Endings.all(matras)) {
        assertEquals(matras, ending.matras() - ending.borrowed());
        if (ending.borrowed() == 0) {
          assertTrue(found.add(ending.statements() + " " + ending.karvais()), ending::written);
        }
      }
      assertEquals(bruteForce(matras), found, "length " + matras);
    }
  }

  private static Set<String> bruteForce(int matras) {
    Set<String> forms = new TreeSet<>();
    for (int a = 1; a <= matras; a++) {
      for (int b = 1; a + b <= matras; b++) {
        int c = 2 * b - a;
        for (int g = 0; c >= 1 && a + b + c + g <= matras; g++) {
          int h = matras - a - b - c - g;
          if (a == b || g == h) {
            forms.add(List.of(a, b, c) + " " + List.of(g, h));
          }
        }
      }
    }
    return forms;
  }

  /**
   * Published endings of 29 after 51 matras: 9(1)9(1)9 and 7(4)7(4)7 or three tens with one matra
   * moved (rasikas.org, "Structuring a Korvai in the thani", p=380684); the rest derived.
   */
  @Test
  void twentyNineMatras() {
    List<String> equal = Endings.equal(29).stream().map(Ending::written).toList();
    assertEquals(
        List.of("9(1)9(1)9", "7(4)7(4)7", "5(7)5(7)5", "3(10)3(10)3", "1(13)1(13)1"), equal);
    Set<String> growing =
        Endings.all(29).stream()
            .filter(ending -> ending.form() == Ending.Form.GROWING_KARVAI)
            .map(Ending::written)
            .collect(Collectors.toSet());
    assertTrue(
        growing.containsAll(
            Set.of("8(0)8(5)8", "8(1)8(4)8", "8(2)8(3)8", "7(3)7(5)7", "9(0)9(2)9")),
        growing::toString);
    Set<String> borrowed =
        Endings.all(29).stream()
            .filter(ending -> ending.borrowed() == 1)
            .map(Ending::written)
            .collect(Collectors.toSet());
    assertTrue(borrowed.contains("10 10 10"), borrowed::toString);
  }

  /** Rising lines 3(1)4(1)5 = 14, 4(1)5(1)6 = 17, 5(1)6(1)7 = 20 (rasikas.org, p=380684). */
  @Test
  void growingStatements() {
    assertTrue(written(14, Ending.Form.GROWING).contains("3(1)4(1)5"));
    assertTrue(written(17, Ending.Form.GROWING).contains("4(1)5(1)6"));
    assertTrue(written(20, Ending.Form.GROWING).contains("5(1)6(1)7"));
    assertTrue(written(20, Ending.Form.SHRINKING).contains("7(1)6(1)5"));
  }

  @Test
  void trivialOnesComeLast() {
    List<EndingChoice> ranked = EndingChoice.rank(29, 4, 1, Tempo.of(80));
    assertEquals(Endings.all(29).size(), new HashSet<>(ranked).size());
    assertEquals("7(4)7(4)7", ranked.get(0).ending().written());
    List<String> first =
        ranked.stream().limit(20).map(choice -> choice.ending().written()).toList();
    assertTrue(first.containsAll(List.of("9(1)9(1)9", "7(4)7(4)7", "5(7)5(7)5")), first::toString);
    List<String> equal =
        ranked.stream()
            .map(EndingChoice::ending)
            .filter(e -> e.form() == Ending.Form.EQUAL && e.borrowed() == 0)
            .map(Ending::written)
            .toList();
    assertEquals("1(13)1(13)1", equal.get(equal.size() - 1));
    assertFalse(first.contains("1(13)1(13)1"));
  }

  /** A gap of two matras at 80 beats a minute: 375 ms in 4, 300 ms in 5 (derived). */
  @Test
  void theSameKarvaiIsShorterInFive() {
    EndingChoice four = choice("7(2)7(2)7", EndingChoice.rank(25, 4, 1, Tempo.of(80)));
    EndingChoice five = choice("7(2)7(2)7", EndingChoice.rank(25, 5, 1, Tempo.of(80)));
    assertEquals(0.375, four.karvaiSeconds(), 1e-9);
    assertEquals(0.300, five.karvaiSeconds(), 1e-9);
    assertEquals(EndingChoice.KarvaiBreath.CATCH, four.breath());
    EndingChoice slow = choice("7(2)7(2)7", EndingChoice.rank(25, 4, 1, Tempo.of(40)));
    assertEquals(EndingChoice.KarvaiBreath.FULL, slow.breath());
  }

  @Test
  void aLengthOutOfRangeIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Endings.all(-1));
    assertThrows(IllegalArgumentException.class, () -> Endings.all(1_001));
    assertEquals(List.of(), Endings.equal(4));
  }

  private static EndingChoice choice(String written, List<EndingChoice> ranked) {
    return ranked.stream()
        .filter(choice -> choice.ending().written().equals(written))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> written(int matras, Ending.Form form) {
    return Endings.all(matras).stream()
        .filter(ending -> ending.form() == form)
        .map(Ending::written)
        .toList();
  }
}
