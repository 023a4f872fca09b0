package org.matraloom.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.time.Ratio;

class RoundPlanReaderTest {

  @ParameterizedTest
  @CsvSource({
    "4-4-5, 4-4-5",
    "4 4 5, 4-4-5",
    "'4,4,5', 4-4-5",
    "4x2-5, 4-4-5",
    "4k2-3k3, 4k2-3k3",
    "4-(7)-4, 4-(1 3/4 beats)-4",
    "4-4-(16n5)-5, 4-4-(3 1/5 beats)-5",
    "4(2 beats)5, 4-(2 beats)-5",
    "4-(1 1/2 beats)-5, 4-(1 1/2 beats)-5",
    "4-(1/2b)-5, 4-(1/2 beat)-5",
    "4-(?)-5, 4-(?n4)-5",
    "4-(?n5)-5, 4-(?n5)-5"
  })
  void readsWhatMusiciansType(String typed, String plan) {
    List<RoundPlan> plans = RoundPlanReader.read(typed);
    assertEquals(1, plans.size());
    assertEquals(plan, plans.get(0).toString());
    assertEquals(plans, RoundPlanReader.read(plan), "what is printed reads the same");
  }

  @Test
  void anOpenRoundIsEveryNadai() {
    assertEquals(
        List.of("4-3", "4-4", "4-5", "4-6", "4-7", "4-8", "4-9"),
        RoundPlanReader.read("4-?").stream().map(RoundPlan::toString).toList());
    assertEquals(49, RoundPlanReader.read("?-?").size());
    assertEquals("3-3", RoundPlanReader.read("?x2").get(0).toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-",
        "(4)",
        "(?)",
        "0",
        "4-0",
        "44",
        "4k4",
        "x",
        "4-(",
        "4-(7",
        "4x99-4x99",
        "?-?-?-?",
        "4-(1/97 beats)-5",
        "4-(1/0 beats)-5",
        "4-(7n0)-5",
        "4-(?n0)-5",
        "4-(two)-5"
      })
  void refusesTheRestWithAReason(String typed) {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> RoundPlanReader.read(typed));
    assertTrue(refused.getMessage().length() > 10, refused::getMessage);
  }

  @Test
  void anyTextIsReadOrRefused() {
    Random random = new Random(5);
    String letters = "0123456789?kxnb()-/ ,abet+";
    int read = 0;
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int length = random.nextInt(12); length >= 0; length--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      try {
        RoundPlanReader.read(text.toString()).forEach(plan -> plan.beatsPerMatra());
        read++;
      } catch (IllegalArgumentException refused) {
        assertTrue(refused.getMessage().length() > 10);
      }
    }
    assertTrue(read > 100, "some were plans: " + read);
  }

  @Test
  void sumsOfAPlan() {
    RoundPlan plan = RoundPlanReader.read("4k2-(3n5)-5-(?)-5").get(0);
    assertEquals(Ratio.of(21, 40), plan.beatsPerMatra());
    assertEquals(Ratio.of(3, 5), plan.waitBeats());
    assertEquals(Ratio.of(1, 5), plan.beatsPerWaitMatra());
    assertTrue(plan.hasOpenWait());
  }
}
