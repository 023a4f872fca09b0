package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidAs;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.BentFit;

/** Slips of whole matras, in takes of which it is known when the last sollu was due. */
class WholeSlipsTest {

  private static final double BEAT = 0.8;
  private static final double MATRA = BEAT / 4;
  private static final double NO_LAG = 0.001;

  private final List<ExpectedSollu> expected =
      SaidAs.expected("tala adi\ntempo 75\nRain = (takadimi) x8\nperform\n  Rain nadai 4\n");

  /** An uneven take in which all from a place on is later. */
  private List<SaidSollu> slipping(int place, double later, double jitter, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<SaidSollu> said = new ArrayList<>();
    for (int k = 0; k < expected.size(); k++) {
      double at = 1 + due(k) + (k >= place ? later : 0) + jitter * random.nextGaussian();
      said.add(new SaidSollu(k, k >= place ? 2 : 1, at, at, 0));
    }
    return said;
  }

  private double due(int place) {
    return BEAT * (expected.get(place).beat().toDouble() - expected.get(0).beat().toDouble());
  }

  /** The root of the mean square by which the last sollu's beat is found wrongly, in seconds. */
  private double error(int place, double later) {
    double squares = 0;
    for (int seed = 0; seed < 200; seed++) {
      CarriedPulse found =
          CarriedPulse.of(expected, slipping(place, later, 0.02, seed), List.of(), NO_LAG)
              .orElseThrow();
      squares += Math.pow(found.dueSeconds() - 1 - due(expected.size() - 1), 2) / 200;
    }
    return Math.sqrt(squares);
  }

  /**
   * Where only sixteen sollus tell when the pulse began and as many how fast it went on, a straight
   * line through both is itself off by its share of the unevenness; who kept the pulse is told by
   * all 32 together.
   */
  @Test
  void aMatraLeftOutOrPutInLeavesThePulseAsItWas() {
    assertEquals(32, expected.size());
    List<SaidSollu> before = slipping(16, MATRA, 0, 1).subList(0, 31);
    double[] beat = before.stream().mapToDouble(s -> due(s.place()) / BEAT).toArray();
    double apart =
        0.02
            * Math.sqrt(
                BentFit.of(
                        beat,
                        before.stream().mapToDouble(SaidSollu::feltSeconds).toArray(),
                        before.stream().mapToInt(SaidSollu::run).toArray(),
                        BentFit.STRAIGHT)
                    .share(due(31) / BEAT, 0, 1));
    for (double matras : new double[] {-1, 1, 2}) {
      double whole = error(16, matras * MATRA);
      assertTrue(whole < 0.8 * apart, matras + " matras: " + whole + " of " + apart);
    }
  }

  /** A wait of no whole matras is carried over as it is: half a matra late is not none. */
  @Test
  void aWaitIsNoWholeMatra() {
    for (double matras : new double[] {0.6, 1.4, 3.3}) {
      CarriedPulse found =
          CarriedPulse.of(expected, slipping(16, matras * MATRA, 0.004, 7), List.of(), NO_LAG)
              .orElseThrow();
      assertEquals(1 + due(31), found.dueSeconds(), 0.012, matras + " matras");
    }
  }

  /** A later matra of the five is a fifth of a beat, and beats behind the slip move with it. */
  @Test
  void beatsFallWhereThePulseHasThem() {
    double[] beat = IntStream.range(0, 12).mapToDouble(i -> 0.2 * i).toArray();
    int[] run = IntStream.range(0, 12).map(i -> i < 6 ? 1 : 2).toArray();
    int[] fives = IntStream.range(0, 12).map(i -> 5).toArray();
    double[] at =
        IntStream.range(0, 12).mapToDouble(i -> 0.2 * i * BEAT + (i < 6 ? 0 : 0.17)).toArray();
    WholeSlips found =
        WholeSlips.of(beat, run, fives, BentFit.of(beat, at, run, BentFit.STRAIGHT)).orElseThrow();
    assertEquals(1.0, found.beat()[5], 1e-9);
    assertEquals(1.4, found.beat()[6], 1e-9);
    assertArrayEquals(new double[] {1.0, 1.6}, found.moved(beat, new double[] {1.0, 1.4}), 1e-9);
  }

  @Test
  void noSlipAndALongWaitAreNoWholeMatras() {
    double[] beat = IntStream.range(0, 12).mapToDouble(i -> 0.25 * i).toArray();
    int[] fours = IntStream.range(0, 12).map(i -> 4).toArray();
    for (double wait : new double[] {0, 0.65}) {
      int[] run = IntStream.range(0, 12).map(i -> i < 6 || wait == 0 ? 1 : 2).toArray();
      double[] at = IntStream.range(0, 12).mapToDouble(i -> 0.2 * i + (i < 6 ? 0 : wait)).toArray();
      assertEquals(
          Optional.empty(),
          WholeSlips.of(beat, run, fours, BentFit.of(beat, at, run, BentFit.STRAIGHT)),
          "wait " + wait);
    }
  }
}
