package org.matraloom.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Up by 5 after two clean takes, down by 10 after two misses: common practice. */
class TempoRuleTest {

  /** Takes are written as their tempo, with ! for a miss; the newest stands last. */
  @ParameterizedTest
  @CsvSource({
    "60,              60, STAY",
    "60 60,           65, UP",
    "60 60 65,        65, STAY",
    "60 60 65 65,     70, UP",
    "60 60 60,        65, UP",
    "60 60!,          60, STAY",
    "60 60! 60,       60, STAY",
    "60! 60!,         50, DOWN",
    "60! 60! 50,      50, STAY",
    "70! 60!,         60, STAY",
    "60.4 59.2,       64, UP",
    "60 63,           63, STAY",
    "70.2! 69.1!,     59, DOWN",
    "38! 38!,         34, DOWN",
    "30! 30!,         30, DOWN",
  })
  void twoInARowDecide(String takes, long tempo, TempoRule.Move move) {
    TempoRule.Advice advice = TempoRule.USUAL.next(points(takes)).orElseThrow();
    assertEquals(tempo, advice.tempo());
    assertEquals(move, advice.move());
  }

  @Test
  void withoutATakeNothingIsSuggested() {
    assertEquals(Optional.empty(), TempoRule.USUAL.next(List.of()));
  }

  @Test
  void theNumbersCanBeSet() {
    TempoRule patient = new TempoRule(3, 2, 1, 4);
    assertEquals(80, patient.next(points("80 80")).orElseThrow().tempo());
    assertEquals(82, patient.next(points("80 80 80")).orElseThrow().tempo());
    assertEquals(76, patient.next(points("80 80!")).orElseThrow().tempo());
    assertThrows(IllegalArgumentException.class, () -> new TempoRule(0, 5, 2, 10));
    assertThrows(IllegalArgumentException.class, () -> new TempoRule(2, 0, 2, 10));
    assertThrows(IllegalArgumentException.class, () -> new TempoRule(2, 5, 2, Double.NaN));
  }

  private static List<CleanTempo.Point> points(String takes) {
    List<CleanTempo.Point> points = new ArrayList<>();
    for (String take : takes.split(" ")) {
      double tempo = Double.parseDouble(take.replace("!", ""));
      points.add(
          new CleanTempo.Point(
              Entries.EVENING.plusMinutes(points.size()), 0, tempo, !take.endsWith("!")));
    }
    return points;
  }
}
