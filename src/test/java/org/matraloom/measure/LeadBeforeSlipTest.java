package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.clap.HeardBeat;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.onset.Onset;
import org.matraloom.pulse.PulseLine;
import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;

/** A slip is no lead: what is taken off a landing against claps was kept before any slip. */
class LeadBeforeSlipTest {

  private static final int SOLLUS = 40;
  private static final double BEAT = 0.4;
  private static final double MATRA = BEAT / 4;
  private static final double LATE = 0.02;

  /** How far the landing is said to be off if a matra is left out before a place. */
  private static double landing(int slip) {
    List<ExpectedSollu> expected =
        IntStream.range(0, SOLLUS)
            .mapToObj(
                k ->
                    new ExpectedSollu(
                        Ratio.of(k, 4),
                        k * MATRA,
                        new Sollu("ta", "ta"),
                        1,
                        "Rain",
                        4,
                        k % 4 + 1,
                        k == 0))
            .toList();
    List<SaidSollu> sollus =
        IntStream.range(0, SOLLUS)
            .mapToObj(
                k -> {
                  double at = 1 + LATE + (k < slip ? k : k - 1) * MATRA;
                  return new SaidSollu(k, k < slip ? 1 : 2, at, at, 0);
                })
            .toList();
    Alignment alignment =
        new Alignment(
            expected,
            sollus.stream().map(said -> new Onset(said.onsetSeconds(), 0.9)).toList(),
            IntStream.range(0, SOLLUS).mapToObj(k -> new Alignment.Said(k, k)).toList());
    int beats = SOLLUS / 4 + 2;
    HeardBeat claps =
        new HeardBeat(
            IntStream.range(0, beats).mapToObj(beat -> 1 + beat * BEAT).toList(),
            0,
            1,
            IntStream.range(0, beats).mapToObj(beat -> true).toList(),
            Set.of(),
            0.005);
    PulseLine line = new PulseLine(0, BEAT, 0, 1 + LATE, 1 + LATE - MATRA);
    TakeLanding landing =
        LandingMeasure.of(
                alignment,
                sollus,
                line,
                Optional.empty(),
                Optional.of(new HeardClaps(claps, 0)),
                List.of(),
                0)
            .orElseThrow();
    assertEquals(LandingBeat.CLAPS, landing.against());
    return landing.errorSeconds();
  }

  @Test
  void aMatraLeftOutAnywhereIsAMatraEarly() {
    for (int slip = 2; slip < SOLLUS; slip++) {
      assertEquals(-MATRA, landing(slip), 1e-6, "before " + slip);
    }
    assertEquals(0, landing(SOLLUS), 1e-6, "none is left out");
  }
}
