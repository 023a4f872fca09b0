package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidAs;
import org.matraloom.follow.SaidSollu;

/** The pulse carried on to the last sollu, in takes of which it is known when that was due. */
class CarriedPulseTest {

  private static final double BEAT = 0.75;
  private static final double SEAM = 8;
  private static final double NO_LAG = 0.001;

  private final List<ExpectedSollu> expected =
      SaidAs.expected(
          "tala adi\ntempo 80\nRain = (takadimi) x8\nDrip = (takatakita) x8\nperform\n"
              + "  Rain nadai 4\n  Drip nadai 5\n");

  /** What was said, each beat at some moment, a little uneven. */
  private List<SaidSollu> said(DoubleUnaryOperator at, double jitter, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<SaidSollu> said = new ArrayList<>();
    for (int k = 0; k < expected.size(); k++) {
      double felt = at.applyAsDouble(beat(k)) + jitter * random.nextGaussian();
      said.add(new SaidSollu(k, 1, felt, felt, 0));
    }
    return said;
  }

  private double beat(int place) {
    return expected.get(place).beat().toDouble() - expected.get(0).beat().toDouble();
  }

  private double last() {
    return beat(expected.size() - 1);
  }

  private CarriedPulse carried(List<SaidSollu> said) {
    return CarriedPulse.of(expected, said, List.of(), NO_LAG).orElseThrow();
  }

  @Test
  void theScoreChangesInItsMiddle() {
    assertEquals(72, expected.size());
    assertEquals(5, expected.get(32).matrasPerBeat());
    assertEquals(SEAM, beat(32), 1e-9);
  }

  /** The last sollu does not draw the beat to where it was said. */
  @Test
  void theLastSolluIsNotAsked() {
    for (double off : new double[] {-0.3, -0.08, 0, 0.08, 0.3}) {
      List<SaidSollu> said = said(b -> 1 + BEAT * b, 0.015, 3);
      SaidSollu end = said.get(71);
      List<SaidSollu> moved = new ArrayList<>(said.subList(0, 71));
      moved.add(new SaidSollu(71, 1, end.onsetSeconds() + off, end.feltSeconds() + off, 0));
      assertEquals(carried(said), carried(moved), "off by " + off);
    }
  }

  /** Who says the five slowly is late by it, whatever the jitter; the truth is known. */
  @Test
  void aBreakIsCarriedOnFromBeforeIt() {
    int sure = 0;
    for (int seed = 0; seed < 40; seed++) {
      for (double slower : new double[] {0.94, 1.04, 1.06}) {
        CarriedPulse found =
            carried(
                said(
                    b -> 1 + BEAT * (Math.min(b, SEAM) + slower * Math.max(0, b - SEAM)),
                    0.010,
                    seed));
        double error = found.dueSeconds() - (1 + BEAT * last());
        sure += Math.abs(error) <= 2.5 * found.doubtSeconds() ? 1 : 0;
        assertTrue(found.doubtSeconds() < 0.035, "" + found);
      }
    }
    assertTrue(sure >= 114, sure + " of 120 within what is said of them");
  }

  /** An even take is told more exactly than by the first half of it alone. */
  @Test
  void anEvenPulseIsCarriedOnFromAllOfIt() {
    double squares = 0;
    double doubts = 0;
    for (int seed = 0; seed < 100; seed++) {
      CarriedPulse found = carried(said(b -> 1 + BEAT * b, 0.015, seed));
      squares += Math.pow(found.dueSeconds() - (1 + BEAT * last()), 2) / 100;
      doubts += Math.pow(found.doubtSeconds(), 2) / 100;
    }
    double halfAlone = 0.015 * Math.sqrt(1 / 32.0 + 12 * Math.pow(last() - 3.875, 2) / 32 / 64);
    assertTrue(Math.sqrt(squares) < 0.7 * halfAlone, Math.sqrt(squares) + " of " + halfAlone);
    assertTrue(doubts > 0.8 * squares, doubts + " said of " + squares);
  }

  /** Growing all the while is not breaking, and the other way about. */
  @Test
  void aGrowthIsToldFromABreak() {
    for (int seed = 0; seed < 30; seed++) {
      for (double sign : new double[] {-1, 1}) {
        List<SaidSollu> grown = said(b -> 1 + BEAT * b * (1 + sign * 0.002 * b), 0.008, seed);
        assertTrue(PulseBefore.isDrift(expected, grown), "grown, seed " + seed);
        assertFalse(PulseBefore.breaks(expected, grown), "grown, seed " + seed);
        List<SaidSollu> broken =
            said(
                b -> 1 + BEAT * (Math.min(b, SEAM) + (1 + sign * 0.06) * Math.max(0, b - SEAM)),
                0.008,
                seed);
        assertFalse(PulseBefore.isDrift(expected, broken), "broken, seed " + seed);
        assertTrue(PulseBefore.breaks(expected, broken), "broken, seed " + seed);
        assertFalse(PulseBefore.isDrift(expected, said(b -> 1 + BEAT * b, 0.008, seed)));
      }
    }
  }

  /** Who is always late with one sollu after another is not late at the end. */
  @Test
  void howASolluIsFeltIsLearntFromItsOwnSounds() {
    String end = expected.get(71).sollu().spelling();
    List<SaidSollu> said = new ArrayList<>();
    for (SaidSollu each : said(b -> 1 + BEAT * b, 0.004, 5)) {
      double late = expected.get(each.place()).sollu().spelling().equals(end) ? 0.03 : 0;
      said.add(new SaidSollu(each.place(), 1, each.feltSeconds(), each.feltSeconds() + late, 0));
    }
    CarriedPulse found = CarriedPulse.of(expected, said, List.of(), 0.02).orElseThrow();
    double error = said.get(71).feltSeconds() - found.dueSeconds() - found.ownSeconds();
    assertEquals(0, error, 0.012);
    assertTrue(found.ownSeconds() > 0.015, "" + found);
  }

  @Test
  void whatIsSaidInAHabitDoesNotCarryTheBeat() {
    List<SaidSollu> rushed =
        said(
            b -> {
              double part = b - Math.floor(b + 1e-9);
              return 1 + BEAT * (b < SEAM ? b : Math.floor(b + 1e-9) + part * 5 / 6);
            },
            0.003,
            1);
    HabitFound habit = new HabitFound(Habit.RUSHED_THEN_WAITING, 2, 1, 0.9, 8);
    CarriedPulse found = CarriedPulse.of(expected, rushed, List.of(habit), NO_LAG).orElseThrow();
    assertEquals(1 + BEAT * last(), found.dueSeconds(), 0.012);
  }

  @Test
  void tooLittleIsNotCarriedOn() {
    List<SaidSollu> few = said(b -> 1 + BEAT * b, 0, 1).subList(64, 72);
    assertTrue(CarriedPulse.of(expected, few, List.of(), NO_LAG).isEmpty());
  }
}
