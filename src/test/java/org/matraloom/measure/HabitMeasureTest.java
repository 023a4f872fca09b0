package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidAs;
import org.matraloom.follow.SaidSollu;

/** Habits of saying five in a beat, as fractions of the beat. */
class HabitMeasureTest {

  private static final List<ExpectedSollu> ASKED = SaidAs.expected(SaidAs.FOUR_AND_FIVE);

  private static final double[] OLD = {0, 0.25, 0.5, 0.75, 1};
  private static final double[] LIMP = {0, 0.25, 0.5, 0.667, 0.833};
  private static final double[] RUSH = {0, 0.17, 0.33, 0.5, 0.67};
  private static final double[] EVEN = {0, 0.2, 0.4, 0.6, 0.8};

  /** Beats of the second round are said at these places, as many of eight as asked. */
  private static List<SaidSollu> said(double[] places, int faulty, double jitter, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<SaidSollu> said =
        SaidAs.moved(
            ASKED,
            beat -> {
              long whole = (long) Math.floor(beat + 1e-9);
              int matra = (int) Math.round(5 * (beat - whole));
              boolean wrong = whole >= 8 && (whole - 8) * faulty / 8 != (whole - 7) * faulty / 8;
              return wrong ? whole + places[matra] : beat;
            });
    List<SaidSollu> shaken = new ArrayList<>();
    for (SaidSollu each : said) {
      double late = jitter * (random.nextDouble() + random.nextDouble() - 1);
      shaken.add(
          new SaidSollu(
              each.place(),
              1,
              each.onsetSeconds() + late,
              each.feltSeconds() + late,
              each.deviationSeconds() + late));
    }
    return shaken;
  }

  private static void assertNamed(Habit habit, double[] places) {
    for (int faulty : new int[] {4, 6, 8}) {
      for (long seed = 0; seed < 20; seed++) {
        List<HabitFound> found =
            HabitMeasure.of(ASKED, said(places, faulty, 0.015, seed), SaidAs.line());
        assertEquals(1, found.size(), habit + ", " + faulty + " beats, seed " + seed);
        assertEquals(habit, found.get(0).habit(), faulty + " beats, seed " + seed);
        assertEquals(2, found.get(0).round());
        assertEquals(1, found.get(0).amount(), 0.3);
      }
    }
  }

  @Test
  void theOldSpeedIsNamed() {
    assertNamed(Habit.OLD_SPEED_KEPT, OLD);
  }

  @Test
  void limpingIsNamed() {
    assertNamed(Habit.LIMPING, LIMP);
  }

  @Test
  void rushingIsNamed() {
    assertNamed(Habit.RUSHED_THEN_WAITING, RUSH);
  }

  /** A round that goes on at the old speed, and so lasts five fourths of its time. */
  @Test
  void theOldSpeedThroughoutIsNamed() {
    List<SaidSollu> slow = SaidAs.moved(ASKED, beat -> beat <= 8 ? beat : 8 + (beat - 8) * 1.25);
    List<HabitFound> found = HabitMeasure.of(ASKED, slow, SaidAs.line());
    assertEquals(
        List.of(new HabitFound(Habit.OLD_SPEED_KEPT, 2, 1, 1, 8)).get(0).habit(),
        found.get(0).habit());
    assertEquals(8, found.get(0).beats());
  }

  @Test
  void nothingIsNamedWithoutCause() {
    int looked = 0;
    for (double jitter : new double[] {0, 0.005, 0.015, 0.03}) {
      for (long seed = 0; seed < 100; seed++) {
        List<SaidSollu> even = said(EVEN, 8, jitter, seed);
        assertEquals(List.of(), HabitMeasure.of(ASKED, even, SaidAs.line()), "seed " + seed);
        looked++;
      }
    }
    assertEquals(400, looked);
  }

  /** Two beats of eight are a slip, not a habit. */
  @Test
  void aSlipIsNoHabit() {
    assertEquals(List.of(), HabitMeasure.of(ASKED, said(RUSH, 2, 0.005, 1), SaidAs.line()));
  }
}
