package org.matraloom.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.EndAmbiguity;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.RecordedRange;
import org.matraloom.follow.SaidAs;
import org.matraloom.follow.SaidSollu;
import org.matraloom.measure.BreathFindings;
import org.matraloom.measure.Habit;
import org.matraloom.measure.HabitFound;
import org.matraloom.measure.LandingBeat;
import org.matraloom.measure.Pulse;
import org.matraloom.measure.SaidNadaiChange;
import org.matraloom.measure.TakeFindings;
import org.matraloom.measure.TakeLanding;
import org.matraloom.schedule.Timeline;

/** What is told of findings that were put together by hand. */
class FaultsTest {

  /** Eight beats of four, and five to the beat for two beats or for sixteen. */
  private static final String SHORT_FIVE = score(1);

  private static final String LONG_FIVE = score(8);

  private static String score(int fives) {
    return "tala adi\ntempo 80\nFour = (kitataka takadimi) x4\n"
        + ("Five = (takatakita takitataka) x" + fives + "\n")
        + "perform\n  Four nadai 4\n  Five nadai 5\n";
  }

  private static final EndAmbiguity EITHER = new EndAmbiguity(true, EndAmbiguity.End.EITHER);
  private static final EndAmbiguity UNLIKE = new EndAmbiguity(true, EndAmbiguity.End.UNLIKE);

  /** A take at 80 beats a minute; each part may be changed before it is judged. */
  private static final class Take {
    final Timeline timeline;
    final List<ExpectedSollu> expected;
    final List<SaidSollu> sollus = new ArrayList<>();
    double driftPercent;
    double spreadSeconds = 0.005;
    Optional<EndAmbiguity> unsure = Optional.empty();
    Set<Integer> unsaid = Set.of();
    List<HabitFound> habits = List.of();
    List<SaidNadaiChange> changes = List.of();
    Optional<TakeLanding> landing;
    RecordedRange recorded;

    Take(String score, IntToDoubleFunction late) {
      timeline = SaidAs.timeline(score);
      expected = ExpectedSollu.of(timeline);
      for (SaidSollu even : SaidAs.even(expected)) {
        double by = late.applyAsDouble(even.place());
        sollus.add(
            new SaidSollu(even.place(), 1, even.onsetSeconds() + by, even.feltSeconds() + by, by));
      }
      recorded = RecordedRange.whole(expected.size());
      landing =
          Optional.of(
              new TakeLanding(expected.size() - 1, 0.004, 0.02, 0.002, 0.06, LandingBeat.PULSE));
    }

    void leavesOut(int place) {
      sollus.removeIf(said -> said.place() == place);
      unsaid = Set.of(place);
    }

    TakeFindings findings() {
      List<Alignment.Said> said =
          sollus.stream().map(each -> new Alignment.Said(each.place(), each.place())).toList();
      Alignment alignment =
          new Alignment(expected, List.of(), said, Set.of(), recorded, unsure, unsaid, List.of());
      return new TakeFindings(
          alignment,
          sollus,
          Optional.of(
              new Pulse(80, driftPercent, spreadSeconds, OptionalDouble.empty(), SaidAs.line())),
          List.of(),
          new TakeFindings.Nadais(List.of(), changes, habits),
          landing,
          new BreathFindings(0, 0, 0, 0, List.of()),
          Optional.empty());
    }

    List<FaultKind> kinds() {
      return Faults.kinds(findings(), timeline.performance());
    }

    Optional<String> worst() {
      return Faults.worst(findings(), timeline.performance()).map(TakeFault::words);
    }
  }

  /** The change to five as it is measured if five is said so much slower. */
  private static List<SaidNadaiChange> changed(List<ExpectedSollu> expected, double slower) {
    int place =
        IntStream.range(0, expected.size())
            .filter(k -> expected.get(k).matrasPerBeat() == 5)
            .findFirst()
            .orElseThrow();
    return List.of(new SaidNadaiChange(place, 2, 4, 5, 1.25 / (1 + slower), OptionalInt.empty()));
  }

  private static Take even() {
    return new Take(SHORT_FIVE, place -> 0);
  }

  /** The third of every five is late, by one of two amounts so that the mean is known. */
  private static Take thirdOfFiveLate(String score, double seconds, double spread) {
    List<ExpectedSollu> expected = SaidAs.expected(score);
    SplittableRandom random = new SplittableRandom(4);
    Take take =
        new Take(
            score,
            place -> {
              ExpectedSollu asked = expected.get(place);
              boolean isThird = asked.matrasPerBeat() == 5 && asked.matra() == 3;
              return isThird ? seconds : spread * random.nextGaussian();
            });
    take.spreadSeconds = spread;
    return take;
  }

  /**
   * Four beats of four, then four of five that are three in a hundred slow or quick, as much as is
   * allowed for short matras: the whole seems to drag or run, but it is the change that does it.
   */
  @Test
  void aChangeAtAWrongSpeedIsToldBeforeTheDriftThatItMakes() {
    List<ExpectedSollu> expected = SaidAs.expected(LONG_FIVE);
    double seam =
        expected.stream()
            .filter(e -> e.matrasPerBeat() == 5)
            .findFirst()
            .orElseThrow()
            .beat()
            .toDouble();
    int tried = 0;
    for (double slower : new double[] {0.03, -0.03}) {
      for (long seed = 0; seed < 20; seed++) {
        SplittableRandom random = new SplittableRandom(seed);
        Take take =
            new Take(
                LONG_FIVE,
                place ->
                    slower * SaidAs.BEAT * Math.max(0, expected.get(place).beat().toDouble() - seam)
                        + 0.008 * random.nextGaussian());
        take.driftPercent = slower > 0 ? -5 : 5;
        take.changes = changed(take.expected, slower);
        String told = take.worst().orElseThrow();
        String asked =
            String.format(Locale.ROOT, "%.2f times as fast, not 1.25", 1.25 / (1 + slower));
        assertTrue(told.startsWith("At the change from 4 to 5"), told);
        assertTrue(told.contains(asked), told);
        tried++;
      }
    }
    assertEquals(40, tried);
  }

  /** Growing all the while is a drift, though the nadai changes on the way. */
  @Test
  void aGrowthIsStillToldAsADrift() {
    List<ExpectedSollu> expected = SaidAs.expected(LONG_FIVE);
    for (double sign : new double[] {-1, 1}) {
      Take take =
          new Take(
              LONG_FIVE,
              place -> sign * 0.001 * Math.pow(expected.get(place).beat().toDouble() - 12, 2));
      take.driftPercent = -5 * sign;
      take.changes = changed(take.expected, sign * 0.03);
      assertEquals(FaultKind.DRIFT, take.kinds().get(0));
    }
  }

  @Test
  void anEvenTakeHasNoFault() {
    assertEquals(List.of(), even().kinds());
  }

  /** Twice late by 30 ms: chance in a take that varies by 20 ms, though the two are alike. */
  @Test
  void fewSollusThatAreAlikeByChanceAreNotUneven() {
    assertEquals(List.of(), thirdOfFiveLate(SHORT_FIVE, 0.030, 0.020).kinds());
  }

  @Test
  void fewSollusInAnEvenTakeAreUneven() {
    assertEquals(List.of(FaultKind.UNEVEN), thirdOfFiveLate(SHORT_FIVE, 0.030, 0.003).kinds());
  }

  @Test
  void manySollusThatAreAlikeAreUneven() {
    Take take = thirdOfFiveLate(LONG_FIVE, 0.030, 0.020);
    assertTrue(take.kinds().contains(FaultKind.UNEVEN), "" + take.kinds());
    assertTrue(take.worst().orElseThrow().startsWith("Matra 3 of the beat in "), "" + take.worst());
  }

  /** Whoever varies by 20 ms all along is off nowhere in particular. */
  @Test
  void noPlaceOfTheBeatIsBlamedForChance() {
    int blamed = 0;
    for (int number = 0; number < 300; number++) {
      SplittableRandom random = new SplittableRandom(number);
      Take take = new Take(SHORT_FIVE, place -> 0.020 * random.nextGaussian());
      take.spreadSeconds = 0.020;
      blamed += take.kinds().contains(FaultKind.UNEVEN) ? 1 : 0;
    }
    assertTrue(blamed <= 6, blamed + " of 300 takes");
  }

  @Test
  void eitherEndIsToldInPlaceOfALandingThatWasNotHeard() {
    Take take = even();
    take.leavesOut(take.expected.size() - 1);
    take.unsaid = Set.of();
    take.landing = Optional.empty();
    assertEquals(FaultKind.END, take.kinds().get(0));
    take.unsure = Optional.of(EITHER);
    assertFalse(take.kinds().contains(FaultKind.END), "" + take.kinds());
    assertEquals(
        "The first sollu or the last is missing: I cannot tell which.", take.worst().orElseThrow());
    assertFalse(take.findings().lands());
  }

  @Test
  void aMissingEndIsToldBeforeAnotherDoubt() {
    for (EndAmbiguity.End at : List.of(EndAmbiguity.End.FIRST, EndAmbiguity.End.LAST)) {
      Take take = even();
      take.leavesOut(take.expected.size() - 1);
      take.landing = Optional.empty();
      take.unsure = Optional.of(new EndAmbiguity(true, at));
      assertEquals(List.of(FaultKind.END, FaultKind.UNSURE), take.kinds().subList(0, 2));
    }
  }

  @Test
  void whatIsUnsureNeverLands() {
    for (EndAmbiguity.End at : EndAmbiguity.End.values()) {
      for (boolean missing : new boolean[] {true, false}) {
        Take take = even();
        assertTrue(take.findings().lands());
        take.unsure = Optional.of(new EndAmbiguity(missing, at));
        assertFalse(take.findings().lands(), at + " " + missing);
        assertTrue(take.worst().isPresent(), at + " " + missing);
      }
    }
  }

  @Test
  void anUnlikeEndAloneIsTold() {
    Take take = even();
    take.unsure = Optional.of(UNLIKE);
    assertEquals(1, take.kinds().size());
    assertEquals(UNLIKE.words(), take.worst().orElseThrow());
  }

  @Test
  void anUnlikeEndIsToldAfterWhatIsMissingOrDisplaced() {
    Take missing = even();
    missing.leavesOut(9);
    Take habit = even();
    habit.habits = List.of(new HabitFound(Habit.LIMPING, 2, 1, 0.9, 4));
    Take late = even();
    late.landing =
        Optional.of(
            new TakeLanding(late.expected.size() - 1, 0.12, 0.8, 0.002, 0.06, LandingBeat.PULSE));
    for (Take take : List.of(missing, habit, late)) {
      Optional<String> before = take.worst();
      assertTrue(before.isPresent());
      take.unsure = Optional.of(UNLIKE);
      assertEquals(before, take.worst());
      assertEquals(2, take.kinds().size(), "" + take.kinds());
    }
  }

  /** Lands within 60 ms; 55 with a standard error of 10 may be either. */
  @Test
  void aLandingThatMayBeALittleOffIsToldAsSuch() {
    Take take = even();
    int last = take.expected.size() - 1;
    take.landing = Optional.of(new TakeLanding(last, 0.055, 0.3, 0.010, 0.06, LandingBeat.PULSE));
    assertEquals(List.of(FaultKind.UNSURE_LANDING), take.kinds());
    String words = take.worst().orElseThrow();
    assertTrue(words.startsWith("It may not land: the last sollu is 55 ms late "), words);
    assertTrue(words.contains(", give or take 20, "), words);
    assertFalse(take.findings().lands());
    take.landing = Optional.of(new TakeLanding(last, 0.07, 0.3, 0.010, 0.06, LandingBeat.PULSE));
    assertFalse(take.kinds().contains(FaultKind.UNSURE_LANDING), "" + take.kinds());
    assertEquals(1, take.kinds().size());
    take.landing = Optional.of(new TakeLanding(last, 0.07, 0.3, 0.080, 0.06, LandingBeat.PULSE));
    assertEquals(List.of(FaultKind.UNSURE_LANDING), take.kinds());
    words = take.worst().orElseThrow();
    assertTrue(words.endsWith("give or take 160: I cannot tell whether it lands."), words);
    take.landing = Optional.of(new TakeLanding(last, 0.039, 0.2, 0.010, 0.06, LandingBeat.PULSE));
    assertEquals(List.of(), take.kinds());
  }

  /** The kinds of a take with many faults come in the order in which {@link FaultKind} has them. */
  @Test
  void theWorstComesFirst() {
    List<Optional<EndAmbiguity>> unsures =
        List.of(Optional.empty(), Optional.of(EITHER), Optional.of(UNLIKE));
    for (Optional<EndAmbiguity> unsure : unsures) {
      Take take = thirdOfFiveLate(LONG_FIVE, 0.040, 0.010);
      take.leavesOut(9);
      take.driftPercent = 6;
      take.habits = List.of(new HabitFound(Habit.LIMPING, 2, 1, 0.9, 4));
      take.unsure = unsure;
      List<FaultKind> kinds = take.kinds();
      assertEquals(unsure.isPresent() ? 5 : 4, kinds.size(), "" + kinds);
      List<FaultKind> sorted = new ArrayList<>(kinds);
      Collections.sort(sorted);
      assertEquals(sorted, kinds);
    }
  }

  /** One more fault makes no take cleaner. */
  @Test
  void anUnlikeEndBesideAFaultIsNotCleanerThanTheUnlikeEndAlone() {
    Take one = even();
    one.unsure = Optional.of(UNLIKE);
    Take two = even();
    two.unsure = Optional.of(UNLIKE);
    two.leavesOut(9);
    String verdict =
        new CleanerTake(one.findings(), two.findings(), one.timeline.performance()).verdict();
    assertTrue(verdict.startsWith("The first take is cleaner: it is free of missing"), verdict);
  }

  /** Where a sollu may be missing at either end, every sound may be another sollu, the last too. */
  @Test
  void theLandingIsNotKnownWhereSomethingMayBeMissingAnywhere() {
    Take take = even();
    assertTrue(take.findings().knownLanding().isPresent());
    for (EndAmbiguity unsure : List.of(EITHER, UNLIKE)) {
      take.unsure = Optional.of(unsure);
      assertTrue(take.findings().landing().isPresent());
      assertTrue(take.findings().knownLanding().isEmpty());
    }
  }

  /** Two standard errors hold 98 of a hundred to one side (any table of the normal law). */
  @Test
  void aLandingThatMayBeOffIsToldWithWhatIsGivenOrTaken() {
    Take take = even();
    int last = take.expected.size() - 1;
    take.landing =
        Optional.of(new TakeLanding(last, -0.055, -0.37, 0.010, 0.06, LandingBeat.PULSE));
    assertEquals(List.of(FaultKind.UNSURE_LANDING), take.kinds());
    String sided = take.worst().orElseThrow();
    assertTrue(
        sided.startsWith(
            "It may not land: the last sollu is 55 ms early (0.37 matras) by the pulse"
                + " of the take, give or take 20, round "),
        sided);
    take.landing =
        Optional.of(new TakeLanding(last, -0.055, -0.37, 0.030, 0.06, LandingBeat.PULSE));
    assertEquals(List.of(FaultKind.UNSURE_LANDING), take.kinds());
    assertEquals(
        "The last sollu is 55 ms early by the pulse of the take, give or take 60: I cannot tell"
            + " whether it lands.",
        take.worst().orElseThrow());
    assertFalse(take.findings().lands());
  }
}
