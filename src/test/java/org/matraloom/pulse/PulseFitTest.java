package org.matraloom.pulse;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PulseFitTest {

  private static final int COUNT = 120;

  private final double[] beat = IntStream.range(0, COUNT).mapToDouble(i -> i / 4.0).toArray();
  private final int[] run = new int[COUNT];

  PulseFitTest() {
    java.util.Arrays.fill(run, 1);
  }

  private double[] times(double begin, double length, double growth) {
    return IntStream.range(0, COUNT)
        .mapToDouble(i -> begin + beat[i] * (length + beat[i] * growth))
        .toArray();
  }

  @Test
  void anExactLineIsFound() {
    PulseLine line = new PulseFit(beat, times(2, 0.75, 0), run).line();
    assertEquals(2, line.secondsAt(0, 1), 1e-6);
    assertEquals(2 + 29 * 0.75, line.secondsAt(29, 1), 1e-6);
    assertEquals(0.75, line.beatSeconds(15), 1e-6);
  }

  /** From 0.8 s a beat to 0.8 - 2 * 0.0004 * 29.75 = 0.7762 s: 3.07 % faster. */
  @Test
  void aGrowingTempoIsFound() {
    PulseLine line = new PulseFit(beat, times(1, 0.8, -0.0004), run).line();
    assertEquals(0.8, line.beatSeconds(0), 1e-6);
    assertEquals(0.7762, line.beatSeconds(29.75), 1e-6);
  }

  @Test
  void twoFifthsMayBeElsewhere() {
    SplittableRandom random = new SplittableRandom(3);
    double[] seconds = times(1, 0.7, 0);
    for (int i = 0; i < COUNT; i++) {
      seconds[i] += 0.004 * (2 * random.nextDouble() - 1);
      if (i % 5 < 2) {
        seconds[i] += random.nextDouble(0.1, 0.5);
      }
    }
    PulseLine line = new PulseFit(beat, seconds, run).line();
    assertEquals(0.7, line.beatSeconds(15), 0.0007);
    assertEquals(1 + 0.7 * 29, line.secondsAt(29, 1), 0.005);
  }

  /** The last quarter is said at four fifths of the speed. */
  @Test
  void aSlowEndDoesNotBendThePulse() {
    double[] seconds = times(1, 0.75, 0);
    for (int i = 90; i < COUNT; i++) {
      seconds[i] += (beat[i] - 22.5) * 0.75 / 4;
    }
    PulseLine line = new PulseFit(beat, seconds, run).line();
    assertEquals(0.75, line.beatSeconds(0), 1e-4);
    assertEquals(1 + 0.75 * 29, line.secondsAt(29, 1), 0.005);
  }

  @Test
  void aRestartHasABeginningOfItsOwn() {
    double[] seconds = times(1, 0.75, 0);
    for (int i = 80; i < COUNT; i++) {
      run[i] = 2;
      seconds[i] += 4.2;
    }
    PulseLine line = new PulseFit(beat, seconds, run).line();
    assertEquals(2, line.runs());
    assertEquals(1 + 0.75 * 29, line.secondsAt(29, 1), 1e-6);
    assertEquals(5.2 + 0.75 * 29, line.secondsAt(29, 2), 1e-6);
  }

  @Test
  void aFewSollusHaveAnEvenPulse() {
    double[] few = {0, 0.5, 1, 1.5};
    double[] seconds = {1, 1.5, 2, 2.5};
    PulseLine line = new PulseFit(few, seconds, new int[] {1, 1, 1, 1}).line();
    assertEquals(1, line.beatSeconds(0), 1e-9);
    assertEquals(1, line.beatSeconds(100), 1e-9);
  }
}
