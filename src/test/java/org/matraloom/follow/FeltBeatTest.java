package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Sollu;

class FeltBeatTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  private static FeltBeat of(String spelling) {
    return FeltBeat.of(new Sollu(spelling, LEXICON.sound(spelling).orElseThrow().name()), LEXICON);
  }

  @Test
  void consonantsAreTold() {
    assertEquals(FeltBeat.DENTAL, of("ta"));
    assertEquals(FeltBeat.RETROFLEX, of("tta"));
    assertEquals(FeltBeat.VELAR, of("ka"));
    assertEquals(FeltBeat.VOICED, of("di"));
    assertEquals(FeltBeat.VOICED_VELAR, of("gi"));
    assertEquals(FeltBeat.AFFRICATE, of("ju"));
    assertEquals(FeltBeat.NASAL, of("na"));
    assertEquals(FeltBeat.NASAL, of("mi"));
    assertEquals(FeltBeat.DENTAL, of("tom"));
    assertEquals(FeltBeat.VOWEL, FeltBeat.of(new Sollu("x", "unknown"), LEXICON));
  }

  /**
   * Unaspirated lags: retroflex 5 to 12 ms, dental 8 to 20, velar 18 to 35, in this order (from
   * Lisker and Abramson, Word 20 (1964) 384-422, and Zue, thesis, MIT, 1976).
   */
  @Test
  void usualLagsLieInThePublishedRanges() {
    assertIn(5, 12, FeltBeat.RETROFLEX);
    assertIn(8, 20, FeltBeat.DENTAL);
    assertIn(18, 35, FeltBeat.VELAR);
    assertEquals(FeltBeat.values().length, FeltBeat.usualLags().length);
    assertTrue(Arrays.stream(FeltBeat.usualLags()).allMatch(lag -> lag >= 0 && lag <= 0.05));
  }

  private static void assertIn(double leastMs, double mostMs, FeltBeat kind) {
    double ms = 1000 * kind.usualLagSeconds();
    assertTrue(ms >= leastMs && ms <= mostMs, kind + ": " + ms);
  }

  /** 24 sollus that seem 9 ms later, against a weight of 12: two thirds, 6 ms. */
  @Test
  void theTakeChangesTheLagBySoMuchAsItKnows() {
    double usual = FeltBeat.DENTAL.usualLagSeconds();
    assertEquals(usual, FeltBeat.DENTAL.lagSeconds(0.009, 0), 1e-12);
    assertEquals(usual + 0.006, FeltBeat.DENTAL.lagSeconds(0.009, 24), 1e-12);
    assertEquals(usual + 0.025, FeltBeat.DENTAL.lagSeconds(0.500, 10_000), 1e-12);
  }
}
