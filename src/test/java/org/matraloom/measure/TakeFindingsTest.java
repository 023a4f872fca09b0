package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.matraloom.breath.Breath;
import org.matraloom.breath.BreathPlanner;
import org.matraloom.breath.BreathSettings;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidAs;
import org.matraloom.madetake.SpokenTake;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.pulse.PulseLine;
import org.matraloom.recording.SoundFiles;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.Ratio;
import org.matraloom.verdict.Cleanness;
import org.matraloom.verdict.Judgement;

/** Made takes, from the sound to the findings. */
class TakeFindingsTest {

  private static final int RATE = 16_000;

  private static final String RAIN =
      """
      title Rain on Tin
      tala adi
      tempo 70
      Drip = takita , takadimi , takatakita ,
      Fall = (tadiginatom , ) x3
      Song = Drip Fall
      perform
        Song x2 nadai 4
        Song nadai 5
      """;

  private static TakeFindings measured(Timeline timeline, double[] times, long seed)
      throws IOException {
    SpokenTake take = SpokenTake.syllablesAt(RATE, times, new SplittableRandom(seed));
    return TakeFindings.of(timeline, OnsetCurve.of(SoundFiles.recording(take.sound(), RATE)));
  }

  private static double[] times(Timeline timeline, DoubleUnaryOperator move, double jitter) {
    SplittableRandom random = new SplittableRandom(11);
    return ExpectedSollu.of(timeline).stream()
        .mapToDouble(sollu -> 0.7 + move.applyAsDouble(sollu.seconds()))
        .map(at -> at + jitter * (2 * random.nextDouble() - 1))
        .toArray();
  }

  @Test
  void aSteadyTakeHasNothingToReproach() throws IOException {
    Timeline timeline = SaidAs.timeline(RAIN);
    TakeFindings found = measured(timeline, times(timeline, t -> t, 0.006), 1);
    assertTrue(found.doubt().isEmpty(), "" + found.doubt());
    Pulse pulse = found.pulse().orElseThrow();
    assertEquals(70, pulse.beatsPerMinute(), 0.2);
    assertEquals(0, pulse.driftPercent(), 0.2);
    assertFalse(pulse.line().wanders());
    assertTrue(found.landing().orElseThrow().lands());
    assertEquals(List.of(), found.habits());
    assertEquals(1.25, found.changes().get(0).ratio(), 0.03);
    Judgement judgement = Judgement.of(found, timeline.performance());
    assertTrue(judgement.good().startsWith("The pulse held at 70."), judgement.good());
  }

  /** Only its own pulse tells where such a take ought to end, and that bends to where it ends. */
  @Test
  void aTakeThatDriftsAudiblyDoesNotLand() throws IOException {
    Timeline timeline =
        SaidAs.timeline("tala adi\ntempo 70\nSong = (takadimi takajunu) x12\nperform\n  Song\n");
    double last = ExpectedSollu.of(timeline).get(95).seconds();
    for (double drift : new double[] {0.01, 0.06}) {
      DoubleUnaryOperator slower = t -> t + drift * t * t / (2 * last);
      TakeFindings found = measured(timeline, times(timeline, slower, 0.004), 3);
      assertTrue(found.landing().orElseThrow().lands(), "by its own pulse, drift " + drift);
      assertEquals(drift > 0.03, found.isByDriftingPulse(), "drift " + drift);
      assertEquals(drift < 0.03, found.lands(), "drift " + drift);
    }
  }

  /** A tempo that comes and goes by 3 % is followed, and the beat is still judged even. */
  @Test
  void aWanderingTakeIsMeasuredFromItsOwnPulse() throws IOException {
    Timeline timeline = SaidAs.timeline(RAIN);
    DoubleUnaryOperator swing = t -> t + 0.16 * Math.sin(2 * Math.PI * t / 24);
    TakeFindings found = measured(timeline, times(timeline, swing, 0.006), 2);
    assertTrue(found.doubt().isEmpty(), "" + found.doubt());
    assertTrue(found.pulse().orElseThrow().line().wanders());
    assertTrue(found.pulse().orElseThrow().spreadSeconds() < 0.020, "" + found.pulse());
    assertFalse(found.landing().orElseThrow().isOff(), "" + found.landing());
    assertEquals(List.of(), found.habits());
  }

  @Test
  void aPauseIsABreath() throws IOException {
    Timeline timeline = SaidAs.timeline(RAIN);
    double[] times = times(timeline, t -> t, 0.004);
    TakeFindings found = measured(timeline, times, 3);
    assertEquals(0, found.breathing().taken().size(), "" + found.breathing());
    for (int k = 54; k < times.length; k++) {
      times[k] += 0.6;
    }
    BreathFindings breathing = measured(timeline, times, 3).breathing();
    assertEquals(1, breathing.taken().size(), "" + breathing);
    assertEquals(53, breathing.taken().get(0).afterPlace());
    assertTrue(breathing.taken().get(0).seconds() > 0.4, "" + breathing);
    assertEquals(times[53] - times[0], breathing.longestSeconds(), 0.35, "" + breathing);
  }

  @Test
  void aBreathCountsAsPlannedOnlyWhereThePlanBreathes() throws IOException {
    Timeline timeline = SaidAs.timeline(RAIN);
    List<ExpectedSollu> expected = ExpectedSollu.of(timeline);
    Set<Ratio> planned =
        BreathPlanner.plan(timeline.performance(), BreathSettings.study()).breaths().stream()
            .map(Breath::afterBeat)
            .collect(Collectors.toSet());
    int there = 20;
    while (!planned.contains(expected.get(there).beat())) {
      there++;
    }
    int elsewhere = there + 3;
    assertFalse(planned.contains(expected.get(elsewhere).beat()));
    for (int place : new int[] {there, elsewhere}) {
      double[] times = times(timeline, t -> t, 0.004);
      for (int k = place + 1; k < times.length; k++) {
        times[k] += 0.6;
      }
      BreathFindings breathing = measured(timeline, times, 3).breathing();
      assertEquals(planned.size(), breathing.planned());
      assertEquals(1, breathing.taken().size(), "" + breathing);
      assertEquals(place, breathing.taken().get(0).afterPlace());
      assertEquals(place == there, breathing.taken().get(0).planned());
      assertEquals(place == there ? 1 : 0, breathing.kept());
    }
  }

  @Test
  void silenceAndNoiseCannotBeJudged() throws IOException {
    Timeline timeline = SaidAs.timeline(RAIN);
    OnsetCurve silent = OnsetCurve.of(SoundFiles.recording(new float[5 * RATE], RATE));
    TakeFindings found = TakeFindings.of(timeline, silent);
    assertEquals("the recording is silent", found.doubt().orElseThrow().reason());
    assertTrue(found.pulse().isEmpty());
    Judgement judgement = Judgement.of(found, timeline.performance());
    assertEquals("No sollu of the score was recognised.", judgement.good());
    assertEquals("I cannot tell how it went: the recording is silent.", judgement.wrong());
    assertTrue(judgement.practice().isEmpty());

    SplittableRandom random = new SplittableRandom(4);
    float[] noise = new float[20 * RATE];
    for (int i = 0; i < noise.length; i++) {
      noise[i] = (float) (0.1 * (2 * random.nextDouble() - 1));
    }
    OnsetCurve noisy = OnsetCurve.of(SoundFiles.recording(noise, RATE));
    assertTrue(TakeFindings.of(timeline, noisy).doubt().isPresent());
  }

  /** Another piece, with other karvais and other sollus. */
  @Test
  void anotherPieceIsNotJudged() throws IOException {
    Timeline other =
        SaidAs.timeline(
            """
            tala rupaka
            tempo 66
            Gust = ta , , takadimi ; dhim , taka , takita ; ;
            Song = Gust (tadigi , natom) x2 Gust
            perform
              Song x3 nadai 4
            """);
    TakeFindings found = measured(SaidAs.timeline(RAIN), times(other, t -> t, 0.006), 5);
    assertTrue(found.doubt().isPresent(), "" + found.pulse());
  }

  @Test
  void aTakeThatBreaksOffDoesNotLand() throws IOException {
    Timeline timeline = SaidAs.timeline(RAIN);
    double[] times = times(timeline, t -> t, 0.006);
    TakeFindings found = measured(timeline, java.util.Arrays.copyOf(times, 50), 6);
    assertTrue(found.landing().isEmpty());
    Judgement judgement = Judgement.of(found, timeline.performance());
    assertTrue(judgement.wrong().startsWith("The landing was not heard"), judgement.wrong());
  }

  /** The karvai after the first line of the second round is a matra too short. */
  @Test
  void aMatraLeftOutIsFoundAndSaid() throws IOException {
    Timeline timeline = SaidAs.timeline(RAIN);
    double[] times = times(timeline, t -> t, 0.005);
    for (int k = 30; k < times.length; k++) {
      times[k] -= 60.0 / 70 / 4;
    }
    TakeFindings found = measured(timeline, times, 7);
    PulseLine line = found.pulse().orElseThrow().line();
    List<TimingJump> slips = TimingJump.of(found.alignment(), found.sollus(), line);
    assertEquals(1, slips.size(), "" + slips);
    assertEquals(30, slips.get(0).place());
    assertEquals(-1, slips.get(0).matras(), 0.08);
    assertEquals(-1, found.landing().orElseThrow().errorMatras() * 4 / 5, 0.1);
    Judgement judgement = Judgement.of(found, timeline.performance());
    assertTrue(judgement.wrong().contains("one matra too few before it"), judgement.wrong());
  }

  /** The second round is said twice, first without a pause and then with one of 1.5 s. */
  @Test
  void onlyAPauseMakesARestart() throws IOException {
    Timeline timeline = SaidAs.timeline(RAIN);
    double[] asked = times(timeline, t -> t, 0.004);
    double round = asked[54] - asked[27];
    for (double pause : new double[] {0, 1.5}) {
      double[] times = java.util.Arrays.copyOf(asked, asked.length + 27);
      for (int k = 27; k < asked.length; k++) {
        times[k + 27] = asked[k] + round + pause;
      }
      TakeFindings found = measured(timeline, times, 8);
      Judgement judgement = Judgement.of(found, timeline.performance());
      boolean begunAgain = judgement.wrong().startsWith("You broke off");
      assertEquals(pause > 0, begunAgain, judgement.wrong());
      assertEquals(pause > 0, found.landing().orElseThrow().lands(), "" + found.landing());
      assertEquals(pause > 0, found.hasRestart());
      assertFalse(found.lands(), "who begins again has not landed in one go");
      assertEquals(pause > 0, found.landsAsBegun());
      if (pause > 0) {
        Cleanness clean = new Cleanness(found, timeline.performance());
        assertEquals(List.of(true, false, true), clean.rounds().stream().map(clean::of).toList());
      }
    }
  }
}
