package org.matraloom.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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
    "70! 60!,         50, DOWN",
    "66! 66! 66! 69.5!, 60, DOWN",
    "66! 69.5!,       60, DOWN",
    "60! 60! 50!,     40, DOWN",
    "66! 69.5! 66,    66, STAY",
    "70 60,           65, UP",
    "70 70! 60,       60, STAY",
    "59.2 60.4,       64, UP",
    "58 60 62,        65, UP",
    "58 62 62,        67, UP",
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

  /** Every row of six takes at three tempi, clean or not: 46,656 of them. */
  @Test
  void missesLeadDownAndOnlyCleanTakesAtThatTempoOrAboveLeadUp() {
    String[] kinds = {"60", "63.5", "70", "60!", "63.5!", "70!"};
    Map<TempoRule.Move, Integer> seen = new EnumMap<>(TempoRule.Move.class);
    for (int row = 0; row < StrictMath.pow(kinds.length, 6); row++) {
      List<String> takes = new ArrayList<>();
      for (int i = 0, rest = row; i < 6; i++, rest /= kinds.length) {
        takes.add(kinds[rest % kinds.length]);
      }
      List<CleanTempo.Point> points = points(String.join(" ", takes));
      TempoRule.Advice advice = TempoRule.USUAL.next(points).orElseThrow();
      List<CleanTempo.Point> lastTwo = points.subList(4, 6);
      boolean bothMissed = lastTwo.stream().noneMatch(CleanTempo.Point::clean);
      assertEquals(bothMissed, advice.move() == TempoRule.Move.DOWN, takes + "");
      if (advice.move() == TempoRule.Move.UP) {
        assertTrue(
            lastTwo.stream().allMatch(take -> take.clean() && take.tempo() >= advice.from()),
            takes + "");
        assertEquals(Math.round(advice.from() + 5), advice.tempo());
      }
      seen.merge(advice.move(), 1, Integer::sum);
    }
    assertEquals(TempoRule.Move.values().length, seen.size(), seen + "");
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
