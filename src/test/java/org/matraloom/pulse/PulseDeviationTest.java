package org.matraloom.pulse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PulseDeviationTest {

  private static final int COUNT = 256;
  private static final double MATRA = 0.1875;

  private final double[] beat = IntStream.range(0, COUNT).mapToDouble(i -> i / 4.0).toArray();
  private final int[] run = new int[COUNT];

  PulseDeviationTest() {
    Arrays.fill(run, 1);
  }

  private double[] late(DoubleUnaryOperator curve, double jitterSeconds) {
    SplittableRandom random = new SplittableRandom(5);
    return Arrays.stream(beat)
        .map(b -> curve.applyAsDouble(b) + jitterSeconds * (2 * random.nextDouble() - 1))
        .toArray();
  }

  /** The tempo swings over 32 beats, by up to 0.12 s, 3 % of the tempo. */
  @Test
  void aSwingingTempoIsFollowed() {
    DoubleUnaryOperator swing = b -> 0.12 * Math.sin(2 * Math.PI * b / 32);
    double[] late = late(swing, 0.008);
    late[100] += 0.15;
    PulseDeviation wander = PulseDeviation.of(beat, late, run, MATRA);
    assertNotSame(PulseDeviation.NONE, wander);
    for (double b = 2; b < 62; b += 0.5) {
      assertEquals(swing.applyAsDouble(b), wander.lateSeconds(b, 1), 0.016, "beat " + b);
    }
  }

  @Test
  void anEvenPulseIsLeftAlone() {
    assertSame(PulseDeviation.NONE, PulseDeviation.of(beat, late(b -> 0, 0.020), run, MATRA));
    assertEquals(0, PulseDeviation.NONE.lateSeconds(3, 1));
  }

  /** From beat 30 on all is a matra early: one was left out, and the pulse did not move. */
  @Test
  void aMatraLeftOutIsNoWandering() {
    double[] late = late(b -> b < 30 ? 0 : -MATRA, 0.008);
    assertSame(PulseDeviation.NONE, PulseDeviation.of(beat, late, run, MATRA));
  }
}
