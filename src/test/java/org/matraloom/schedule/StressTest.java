package org.matraloom.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.SaidAs;
import org.matraloom.time.Ratio;

/** Which sollus are stressed: those that open a round or a phrase, and those on samam. */
class StressTest {

  private static Map<Ratio, Stress> stresses(String song) {
    String text =
        """
        tala adi
        tempo 60
        Drip = takadimi
        Song = %s
        perform
          Song x2 nadai 4
        """;
    Map<Ratio, Stress> stresses = new TreeMap<>();
    for (Event event : SaidAs.timeline(text.formatted(song))) {
      if (event instanceof Event.SolluSaid said) {
        stresses.put(said.beat(), said.stress());
      }
    }
    return stresses;
  }

  @Test
  void roundsComeBeforeSamamAndSamamBeforePhrases() {
    Map<Ratio, Stress> six = stresses("Drip Drip Drip Drip Drip Drip");
    assertEquals(48, six.size());
    assertEquals(Stress.ROUND, six.get(Ratio.ZERO));
    assertEquals(Stress.PHRASE, six.get(Ratio.of(5)));
    assertEquals(Stress.ROUND, six.get(Ratio.of(6)));
    assertEquals(Stress.SAMAM, six.get(Ratio.of(8)));
    assertTrue(six.containsKey(Ratio.of(1, 4)));
    six.forEach((beat, stress) -> assertEquals(beat.isWhole(), stress != Stress.NONE, "" + beat));
  }

  @Test
  void whatOpensNothingIsStressedOnSamamOnly() {
    Map<Ratio, Stress> seven = stresses("takadimi takadimi " + "ta ka di mi ".repeat(5));
    assertEquals(56, seven.size());
    for (Map.Entry<Ratio, Stress> said : seven.entrySet()) {
      Ratio beat = said.getKey();
      Stress wanted =
          beat.signum() == 0 || beat.equals(Ratio.of(7))
              ? Stress.ROUND
              : beat.equals(Ratio.of(8)) ? Stress.SAMAM : Stress.NONE;
      assertEquals(wanted, said.getValue(), "beat " + beat);
    }
  }
}
