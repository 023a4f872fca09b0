package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidAs;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseLine;

/** Each measure on sollus that were put where the answer is known. */
class TakeMeasuresTest {

  private static final List<ExpectedSollu> ASKED = SaidAs.expected(SaidAs.FOUR_AND_FIVE);

  private static final Alignment HEARD = new Alignment(ASKED, List.of(), List.of());

  private static final PulseLine LINE = SaidAs.line();

  private static Pulse pulse(List<SaidSollu> said, PulseLine line) {
    return PulseMeasure.of(ASKED, new SaidSollus(said, line), Optional.empty());
  }

  @Test
  void theScoreHasEightBeatsOfFourAndEightOfFive() {
    assertEquals(32 + 40, ASKED.size());
    assertEquals(4, ASKED.get(31).matrasPerBeat());
    assertEquals(5, ASKED.get(32).matrasPerBeat());
    assertEquals(1, ASKED.get(32).matra());
    assertEquals(5, ASKED.get(71).matra());
    assertEquals("Five", ASKED.get(71).phrase());
  }

  /** 0.75 s a beat are 80 beats a minute. */
  @Test
  void anEvenTakeHasItsTempoAndNoDrift() {
    Pulse pulse = pulse(SaidAs.even(ASKED), LINE);
    assertEquals(80, pulse.beatsPerMinute(), 1e-9);
    assertEquals(0, pulse.driftPercent(), 1e-9);
    assertEquals(0, pulse.spreadSeconds(), 1e-9);
  }

  /**
   * The first beat lasts 0.75 s, the one at the last sollu, 15.8 beats on, 0.75 - 2 * 0.001 * 15.8
   * = 0.7184 s; 0.75 / 0.7184 is 1.04399. In the middle, 7.9 beats on, it lasts 0.7342 s.
   */
  @Test
  void driftIsTheTempoAtTheEndAgainstThatAtTheBeginning() {
    Pulse pulse = pulse(SaidAs.even(ASKED), new PulseLine(0, 0.75, -0.001, 1));
    assertEquals(4.399, pulse.driftPercent(), 0.001);
    assertEquals(60 / 0.7342, pulse.beatsPerMinute(), 1e-6);
  }

  /** The guide's first beat was heard at 1.04 s, where the take's falls at 1 s: 40 ms ahead. */
  @Test
  void aLeadIsToldByTheGuideAndChangesNothingElse() {
    SaidSollus said = new SaidSollus(SaidAs.even(ASKED), LINE);
    Pulse pulse = PulseMeasure.of(ASKED, said, Optional.of(new GuideStart(0, 1.04, 80)));
    assertEquals(-0.040, pulse.leadSeconds().getAsDouble(), 1e-9);
    assertEquals(0, pulse.spreadSeconds(), 1e-9);
    assertTrue(
        LandingMeasure.of(
                HEARD, said.sollus(), LINE, Optional.empty(), Optional.empty(), List.of(), 0)
            .orElseThrow()
            .lands());
    assertEquals(
        OptionalDouble.empty(),
        PulseMeasure.of(ASKED, said, Optional.of(new GuideStart(0, 1.04, 90))).leadSeconds());
  }

  @Test
  void theTempoOfARoundIsItsOwn() {
    List<SaidSollu> slow = SaidAs.moved(ASKED, beat -> beat <= 8 ? beat : 8 + (beat - 8) * 1.25);
    assertEquals(80, RoundMeasure.beatsPerMinute(ASKED, slow.subList(0, 32)), 1e-6);
    assertEquals(64, RoundMeasure.beatsPerMinute(ASKED, slow.subList(32, 72)), 1e-6);
    assertEquals(0, RoundMeasure.beatsPerMinute(ASKED, slow.subList(0, 2)));
  }

  /** The third of four is 30 ms late in every other beat: 15 ms in the mean, over 8 beats. */
  @Test
  void evennessIsMeanAndSpreadOfEachPlace() {
    List<SaidSollu> said = new ArrayList<>(SaidAs.even(ASKED));
    for (int k = 2; k < 32; k += 8) {
      SaidSollu even = said.get(k);
      said.set(k, new SaidSollu(k, 1, even.onsetSeconds(), even.feltSeconds() + 0.03, 0.03));
    }
    List<Evenness> found = EvennessMeasure.of(ASKED, said, LINE);
    assertEquals(4 + 5, found.size());
    Evenness third = found.get(2);
    assertEquals(4, third.matrasPerBeat());
    assertEquals(3, third.matra());
    assertEquals(8, third.count());
    assertEquals(0.015, third.meanSeconds(), 1e-12);
    assertEquals(Math.sqrt(8 * 0.015 * 0.015 / 7), third.spreadSeconds(), 1e-12);
    assertEquals(0, found.get(3).meanSeconds(), 1e-12);
  }

  @Test
  void fourToFiveIsAQuickeningOfFiveFourths() {
    List<SaidNadaiChange> changes = NadaiChangeMeasure.of(ASKED, SaidAs.even(ASKED), LINE);
    assertEquals(1, changes.size());
    SaidNadaiChange change = changes.get(0);
    assertEquals(32, change.place());
    assertEquals(1.25, change.ratio(), 1e-9);
    assertEquals(1.25, change.asked(), 1e-12);
    assertEquals(OptionalInt.of(0), change.beatsUntilSteady());
  }

  @Test
  void theOldSpeedIsNoQuickening() {
    List<SaidSollu> slow = SaidAs.moved(ASKED, beat -> beat <= 8 ? beat : 8 + (beat - 8) * 1.25);
    SaidNadaiChange change = NadaiChangeMeasure.of(ASKED, slow, LINE).get(0);
    assertEquals(1, change.ratio(), 1e-9);
    assertEquals(OptionalInt.empty(), change.beatsUntilSteady());
  }

  /** For three beats the new matras are a tenth too long, then they are right. */
  @Test
  void itTakesBeatsUntilTheNewSpeedIsSteady() {
    List<SaidSollu> said =
        SaidAs.moved(ASKED, b -> b <= 8 ? b : b <= 11 ? 8 + (b - 8) * 1.1 : b + 0.3);
    SaidNadaiChange change = NadaiChangeMeasure.of(ASKED, said, LINE).get(0);
    assertEquals(OptionalInt.of(3), change.beatsUntilSteady());
  }

  @Test
  void theLandingIsThatOfTheLastSollu() {
    List<SaidSollu> said = SaidAs.moved(ASKED, beat -> beat + (beat > 15.7 ? 0.1 : 0));
    TakeLanding landing =
        LandingMeasure.of(HEARD, said, LINE, Optional.empty(), Optional.empty(), List.of(), 0)
            .orElseThrow();
    assertEquals(71, landing.place());
    assertEquals(0.075, landing.errorSeconds(), 1e-9);
    assertEquals(0.5, landing.errorMatras(), 1e-9);
    assertFalse(landing.lands());
    assertTrue(
        LandingMeasure.of(
                HEARD, SaidAs.even(ASKED), LINE, Optional.empty(), Optional.empty(), List.of(), 0)
            .orElseThrow()
            .lands());
    assertEquals(
        Optional.empty(),
        LandingMeasure.of(
            HEARD, said.subList(0, 71), LINE, Optional.empty(), Optional.empty(), List.of(), 0));
  }

  /**
   * From the second beat of five on a matra, 0.15 s, is missing: the end is that much too early.
   */
  @Test
  void aMatraLeftOutIsASlipAndDisplacesTheLanding() {
    PulseLine line = new PulseLine(0, SaidAs.BEAT, 0, 1, 0.85);
    List<SaidSollu> said = new ArrayList<>();
    for (SaidSollu each : SaidAs.moved(ASKED, beat -> beat < 9 ? beat : beat - 0.2)) {
      int run = each.place() < 37 ? 1 : 2;
      said.add(new SaidSollu(each.place(), run, each.onsetSeconds(), each.feltSeconds(), 0));
    }
    List<TimingJump> slips = TimingJump.of(HEARD, said, line);
    assertEquals(1, slips.size());
    assertEquals(37, slips.get(0).place());
    assertEquals(-0.15, slips.get(0).seconds(), 1e-9);
    assertEquals(-1, slips.get(0).matras(), 1e-9);
    assertEquals("one matra too few", slips.get(0).words());
    TakeLanding landing =
        LandingMeasure.of(HEARD, said, line, Optional.empty(), Optional.empty(), List.of(), 0)
            .orElseThrow();
    assertEquals(-1, landing.errorMatras(), 1e-9);
    assertFalse(landing.lands());
  }
}
