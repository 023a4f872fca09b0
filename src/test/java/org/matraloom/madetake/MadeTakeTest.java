package org.matraloom.madetake;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.schedule.Timeline;
import org.matraloom.voice.VoicePerson;

/** The takes that are made to try the measuring are what their labels say. */
class MadeTakeTest {

  private static final double BEAT = 60.0 / 72;

  private final Timeline culvert = TakeCase.timeline(Path.of("samples-synth", "culvert.loom"));

  @Test
  void aTakeWithoutFlawsKeepsTheScore() {
    TakePlan plan = TakePlan.of(culvert, exact(1));
    List<ExpectedSollu> expected = ExpectedSollu.of(culvert);
    assertEquals(expected.size(), plan.sollus().size());
    for (int k = 0; k < expected.size(); k++) {
      assertEquals(0.8 + expected.get(k).seconds(), plan.sollus().get(k).feltSeconds(), 1e-9);
    }
    assertEquals(72, plan.pulse().beatsPerMinute(), 1e-9);
  }

  @Test
  void tempoAndDriftAreAsAsked() {
    Flaws flaws = exact(2);
    flaws.tempoFactor = 0.8;
    flaws.driftPercent = 3;
    TakePulse pulse = TakePlan.of(culvert, flaws).pulse();
    double first = pulse.firstBeat();
    double last = first + pulse.beats();
    double begins = pulse.secondsAt(first + 0.01) - pulse.secondsAt(first);
    double ends = pulse.secondsAt(last) - pulse.secondsAt(last - 0.01);
    assertEquals(1.03, begins / ends, 0.001);
    assertEquals(28 * BEAT / 0.8, pulse.secondsAt(last) - pulse.secondsAt(first), 1e-9);
  }

  /** Places of five matras: the three wrong habits of five in a beat, as fractions of the beat. */
  @Test
  void wrongFivesFallWhereTheyAreSaidTo() {
    double[] limping = {0, 0.25, 0.5, 0.667, 0.833};
    double[] rushed = {0, 0.17, 0.33, 0.5, 0.67};
    double[] old = {0, 0.25, 0.5, 0.75, 1 - 0.07 / 0.75};
    for (int q = 0; q < 5; q++) {
      assertEquals(limping[q], KhandaFault.LIMPING.place(q / 5.0, 0.75), 1e-9);
      assertEquals(rushed[q], KhandaFault.RUSHED.place(q / 5.0, 0.75), 1e-9);
      assertEquals(old[q], KhandaFault.OLD_SPEED_IN_EACH_BEAT.place(q / 5.0, 0.75), 1e-9);
    }
  }

  @Test
  void theOldSpeedMakesTheLastRoundLonger() {
    Flaws flaws = exact(3);
    flaws.khanda = Optional.of(KhandaFault.OLD_SPEED_THROUGHOUT);
    List<SolluTruth> wrong = TakePlan.of(culvert, flaws).sollus();
    List<SolluTruth> right = TakePlan.of(culvert, exact(3)).sollus();
    int last = right.size() - 1;
    double late = wrong.get(last).feltSeconds() - right.get(last).feltSeconds();
    double into = right.get(last).said().beat().toDouble() - 24;
    assertEquals(0.25 * into * BEAT, late, 1e-9);
  }

  @Test
  void sollusAreMissedDoubledAndSaidAgain() {
    Flaws flaws = exact(5);
    flaws.missedShare = 0.1;
    flaws.doubled = 3;
    Set<Integer> places = new HashSet<>();
    List<SolluTruth> sollus = TakePlan.of(culvert, flaws).sollus();
    sollus.forEach(sollu -> places.add(sollu.place()));
    assertTrue(places.contains(SolluTruth.NO_PLACE), "one was doubled");
    assertTrue(places.size() < ExpectedSollu.of(culvert).size() - 3, "some were missed");
    Flaws again = exact(6);
    again.restarts = true;
    assertTrue(TakePlan.of(culvert, again).sollus().size() > 81 + 5, "a round was begun again");
  }

  @Test
  void theLandingErrorIsInTheLastSollus() {
    Flaws flaws = exact(7);
    flaws.landingSeconds = 0.06;
    flaws.landingSollus = 3;
    List<SolluTruth> late = TakePlan.of(culvert, flaws).sollus();
    List<SolluTruth> right = TakePlan.of(culvert, exact(7)).sollus();
    int last = right.size() - 1;
    for (int back = 0; back < 4; back++) {
      double off = late.get(last - back).feltSeconds() - right.get(last - back).feltSeconds();
      assertEquals(Math.max(0, 0.06 - 0.02 * back), off, 1e-9);
    }
  }

  @Test
  void theSameSeedGivesTheSameTake() {
    Flaws flaws = new Flaws(8);
    flaws.breathes = true;
    MadeTake one = MadeTake.of(culvert, flaws, new OwnSpeaker(VoicePerson.HIGH));
    MadeTake two = MadeTake.of(culvert, flaws, new OwnSpeaker(VoicePerson.HIGH));
    assertArrayEquals(one.sound(), two.sound());
    assertTrue(one.plan().breaths().size() > 3, "breaths were taken");
    for (SolluTruth sollu : one.plan().sollus()) {
      double ahead = sollu.feltSeconds() - sollu.onsetSeconds();
      assertTrue(ahead >= 0 && ahead < 0.1, "the onset is a little before the vowel: " + ahead);
    }
  }

  /** A burst at 0.1 s and a vowel from 0.13 s. */
  @Test
  void marksOfASyllableAreMeasuredOnItsSound() {
    int rate = SolluSpeaker.RATE;
    float[] sound = new float[rate / 2];
    Random random = new Random(9);
    for (int i = rate / 10; i < sound.length; i++) {
      double t = (double) i / rate;
      double burst = Math.exp(-(t - 0.1) / 0.004) * random.nextGaussian();
      double vowel = t < 0.13 ? 0 : Math.sin(2 * Math.PI * 110 * t) + Math.sin(1540 * Math.PI * t);
      sound[i] = (float) (0.1 * burst + 0.3 * vowel);
    }
    SyllableMarks marks = SyllableMarks.of(sound, rate);
    assertEquals(0.1, (double) marks.releaseFrame() / rate, 0.002);
    assertEquals(0.13, (double) marks.vowelFrame() / rate, 0.003);
  }

  private static Flaws exact(long seed) {
    Flaws flaws = new Flaws(seed);
    flaws.jitterSeconds = 0;
    return flaws;
  }
}
