package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidAs;
import org.matraloom.follow.SaidSollu;
import org.matraloom.onset.Onset;
import org.matraloom.pulse.PulseLine;

/** Waits, and matras too many or too few, of a take at 0.75 s a beat. */
class TimingJumpTest {

  private static final List<ExpectedSollu> ASKED = SaidAs.expected(SaidAs.FOUR_AND_FIVE);

  /** The second beat of the second nadai's round, and one in the first. */
  private static final int IN_FIVE = 37;

  private static final int IN_FOUR = 13;

  private static double matraSeconds(int place) {
    return SaidAs.BEAT / ASKED.get(place).matrasPerBeat();
  }

  /** The slips of a take that is later from a place on, with other sounds in the time between. */
  private static List<TimingJump> slips(int place, double laterSeconds, double sure, int sounds) {
    double later = laterSeconds / SaidAs.BEAT;
    double beat = ASKED.get(place).beat().toDouble();
    List<SaidSollu> said = new ArrayList<>();
    for (SaidSollu each : SaidAs.moved(ASKED, b -> b < beat ? b : b + later)) {
      int run = each.place() < place ? 1 : 2;
      said.add(new SaidSollu(each.place(), run, each.onsetSeconds(), each.feltSeconds(), 0));
    }
    double from = said.get(place - 1).onsetSeconds();
    double to = said.get(place).onsetSeconds();
    List<Onset> onsets = new ArrayList<>();
    for (int i = 1; i <= sounds; i++) {
      onsets.add(new Onset(from + (to - from) * i / (sounds + 1), sure));
    }
    Alignment heard = new Alignment(ASKED, onsets, List.of());
    return TimingJump.of(heard, said, new PulseLine(0, SaidAs.BEAT, 0, 1, 1 + laterSeconds));
  }

  private static TimingJump slip(int place, double matras, int sounds) {
    List<TimingJump> slips = slips(place, matras * matraSeconds(place), 0.9, sounds);
    assertEquals(1, slips.size(), matras + " matras: " + slips);
    assertEquals(place, slips.get(0).place());
    assertEquals(matras, slips.get(0).matras(), 1e-9);
    assertEquals(matras * matraSeconds(place), slips.get(0).seconds(), 1e-9);
    return slips.get(0);
  }

  /** Nothing, or a clap a beat, is heard in the time that it is longer by. */
  @ParameterizedTest
  @CsvSource({"0.6, 0", "1, 0", "2, 0", "2, 1", "3, 1", "4, 1", "5, 1", "8, 2", "16, 4"})
  void aWaitWithClapsInItIsAWait(double matras, int claps) {
    for (int place : new int[] {IN_FOUR, IN_FIVE}) {
      TimingJump slip = slip(place, matras, claps);
      assertTrue(slip.waited(), "" + slip);
      assertTrue(slip.words().matches("a wait of [0-9]\\.[0-9]{2} s"), slip.words());
    }
    assertEquals("a wait of 0.60 s", slip(IN_FIVE, 4, 1).words());
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "2, 2", "3, 2", "3, 3", "4, 3", "4, 4", "8, 8", "8, 6"})
  void matrasWithSoundsInThemAreTooMany(double matras, int sounds) {
    for (int place : new int[] {IN_FOUR, IN_FIVE}) {
      TimingJump slip = slip(place, matras, sounds);
      assertFalse(slip.waited(), "" + slip);
      String amount = matras == 1 ? "one matra" : matras + " matras";
      assertEquals(amount + " too many", slip.words());
    }
  }

  @ParameterizedTest
  @CsvSource({"-0.6, 0", "-1, 0", "-2, 0", "-1, 1"})
  void whatComesEarlyIsNeverAWait(double matras, int sounds) {
    TimingJump slip = slip(IN_FOUR, matras, sounds);
    assertFalse(slip.waited());
    assertTrue(slip.words().endsWith(" too few"), slip.words());
  }

  /** What is hardly an onset is no matra put in; nor are sounds before and after. */
  @Test
  void onlySureSoundsInBetweenArePutIn() {
    List<TimingJump> slips = slips(IN_FOUR, 3 * matraSeconds(IN_FOUR), 0.5, 3);
    assertEquals(1, slips.size());
    assertTrue(slips.get(0).waited());
  }

  @Test
  void lessThanHalfAMatraIsNoSlip() {
    for (double matras : new double[] {-0.45, 0, 0.45}) {
      assertEquals(List.of(), slips(IN_FIVE, matras * matraSeconds(IN_FIVE), 0.9, 0));
    }
  }
}
