package org.matraloom.pulse;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PulseRunsTest {

  private static final int COUNT = 40;

  private final int[] place = IntStream.range(0, COUNT).toArray();
  private final double[] beat = IntStream.range(0, COUNT).mapToDouble(i -> i / 4.0).toArray();
  private final double[] matra = new double[COUNT];
  private final double[] heard = Arrays.stream(beat).map(b -> 1 + 0.8 * b).toArray();

  PulseRunsTest() {
    Arrays.fill(matra, 0.25);
  }

  private int[] runs() {
    return PulseRuns.of(place, beat, matra, heard);
  }

  private static int[] runsFrom(int second) {
    return IntStream.range(0, COUNT).map(i -> i < second ? 1 : 2).toArray();
  }

  @Test
  void anEvenTakeIsOneRun() {
    assertArrayEquals(runsFrom(COUNT), runs());
    assertEquals(0, PulseRuns.of(new int[0], new double[0], new double[0], new double[0]).length);
  }

  @Test
  void goingBackBeginsAnother() {
    for (int i = 20; i < COUNT; i++) {
      place[i] -= 12;
      beat[i] -= 3;
      heard[i] += 1.3;
    }
    assertArrayEquals(runsFrom(20), runs());
  }

  /** A matra lasts 0.2 s. */
  @Test
  void aMatraMoreOrLessBeginsAnother() {
    for (double slip : new double[] {-0.2, 0.2, 0.5}) {
      double[] kept = heard.clone();
      for (int i = 17; i < COUNT; i++) {
        heard[i] += slip;
      }
      assertArrayEquals(runsFrom(17), runs(), "slip of " + slip);
      System.arraycopy(kept, 0, heard, 0, COUNT);
    }
  }

  @Test
  void oneLateSolluIsNoSlip() {
    heard[17] += 0.18;
    assertArrayEquals(runsFrom(COUNT), runs());
  }

  @Test
  void withoutMatrasNothingSlips() {
    Arrays.fill(matra, 0);
    for (int i = 17; i < COUNT; i++) {
      heard[i] += 0.2;
    }
    assertArrayEquals(runsFrom(COUNT), runs());
  }
}
