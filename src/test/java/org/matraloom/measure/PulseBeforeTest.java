package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.HeardTake;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseLine;

/** The landing of a five that is slow or quick is told by the pulse before it. */
class PulseBeforeTest {

  private static final double TEMPO = 72;
  private static final double BEAT = 60 / TEMPO;

  private final List<ExpectedSollu> expected =
      new HeardTake(
              "tala adi\ntempo 72\nSong = (takadimi takajunu) x10\nperform\n"
                  + "  Song x2 nadai 4\n  Song nadai 5\n",
              1,
              0)
          .expected;

  /** Two rounds at 72, the third at another tempo. */
  private List<SaidSollu> said(double thirdTempo, double jitterSeconds, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<SaidSollu> said = new ArrayList<>();
    double seam = 40;
    for (int k = 0; k < expected.size(); k++) {
      double beat = expected.get(k).beat().toDouble();
      double at = 1 + Math.min(beat, seam) * BEAT + Math.max(0, beat - seam) * 60 / thirdTempo;
      at += jitterSeconds * random.nextGaussian();
      said.add(new SaidSollu(k, 1, at, at, 0));
    }
    return said;
  }

  private double dueError(double thirdTempo) {
    double beats = expected.get(expected.size() - 1).beat().toDouble() - 40;
    return beats * (60 / thirdTempo - BEAT);
  }

  @ParameterizedTest
  @CsvSource({"70", "68.4", "66", "64.8", "75.6", "71.3", "72.7", "72.01"})
  void theLandingIsWithinTwentyMillisecondsOfTheTruth(double thirdTempo) {
    for (long seed = 0; seed < 20; seed++) {
      List<SaidSollu> said = said(thirdTempo, 0.010, seed);
      double noise = 0;
      SaidSollu last = said.get(said.size() - 1);
      double beat = expected.get(last.place()).beat().toDouble();
      double truth = 1 + Math.min(beat, 40) * BEAT + (beat - 40) * 60 / thirdTempo;
      noise = last.feltSeconds() - truth;
      Alignment alignment = new Alignment(expected, List.of(), List.of());
      TakeLanding landing =
          LandingMeasure.of(
                  alignment,
                  said,
                  new PulseLine(0, BEAT, 0, 1),
                  Optional.empty(),
                  Optional.empty(),
                  List.of(),
                  0)
              .orElseThrow();
      assertEquals(dueError(thirdTempo) + noise, landing.errorSeconds(), 0.020, "seed " + seed);
      if (Math.abs(dueError(thirdTempo)) > 0.1) {
        assertEquals(LandingBeat.PULSE_BEFORE_CHANGE, landing.against());
        assertFalse(landing.lands());
      }
    }
  }

  @Test
  void aPulseThatGrowsAllTheWhileIsDriftAndNoBreak() {
    for (long seed = 0; seed < 20; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<SaidSollu> said = new ArrayList<>();
      for (int k = 0; k < expected.size(); k++) {
        double beat = expected.get(k).beat().toDouble();
        double at = 1 + beat * BEAT * (1 + 0.0005 * beat) + 0.008 * random.nextGaussian();
        said.add(new SaidSollu(k, 1, at, at, 0));
      }
      assertTrue(PulseBefore.of(expected, said).isEmpty(), "seed " + seed);
    }
  }

  @Test
  void withoutAChangeThereIsNoPulseBeforeIt() {
    List<ExpectedSollu> even = expected.subList(0, 160);
    assertTrue(PulseBefore.of(even, said(72, 0.005, 1).subList(0, 160)).isEmpty());
  }

  @Test
  void theGuideCountsBeforeAllElse() {
    List<SaidSollu> said = said(72, 0.004, 3);
    TakeLanding landing =
        LandingMeasure.of(
                new Alignment(expected, List.of(), List.of()),
                said,
                new PulseLine(0, BEAT, 0, 1),
                Optional.of(new GuideStart(0, 1.03, TEMPO)),
                Optional.empty(),
                List.of(),
                0)
            .orElseThrow();
    assertEquals(LandingBeat.GUIDE, landing.against());
    assertEquals(0, landing.errorSeconds(), 0.015, "a constant lead is no fault");
    assertTrue(landing.lands());
  }
}
