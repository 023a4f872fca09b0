package org.matraloom.pulse;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
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

  /** The same where the take has hardly begun; three even sollus tell where they would go on. */
  @Test
  void anEarlySlipSpreadOverSomeSollusIsOneBoundary() {
    double[] even = heard.clone();
    for (double slip : new double[] {-0.2, 0.2}) {
      for (int spread = 2; spread <= 3; spread++) {
        for (int at = 3; at < 6; at++) {
          for (int i = 0; i < COUNT; i++) {
            heard[i] = even[i] + slip * Math.max(0, Math.min(1, (i - at + 1.0) / spread));
          }
          assertArrayEquals(runsFrom(at), runs(), slip + " over " + spread + " from " + at);
        }
      }
    }
  }

  /** A matra lasts 0.2 s; the sound of the sollu left out went to another, or to two. */
  @Test
  void aSlipSpreadOverSomeSollusIsOneBoundary() {
    double[] even = heard.clone();
    for (double slip : new double[] {-0.2, 0.2}) {
      for (int spread = 2; spread <= 3; spread++) {
        for (int at = 6; at <= COUNT - 6 - spread; at++) {
          for (int i = 0; i < COUNT; i++) {
            heard[i] = even[i] + slip * Math.max(0, Math.min(1, (i - at + 1.0) / spread));
          }
          assertArrayEquals(runsFrom(at), runs(), slip + " over " + spread + " from " + at);
        }
      }
    }
  }

  /**
   * A matra of 0.203 s left out after the fourth sollu, two sounds on the way and three before them
   * uneven by 11 ms, as it was heard in a take.
   */
  @Test
  void anEarlySlipSpreadOverTwoSollusIsFoundThoughTheBeginningIsUneven() {
    double[] off = {0.202, 0.213, 0.212, 0.160, 0.066, 0.002, -0.007, 0.005, -0.007, 0.004};
    for (double more : new double[] {1, 2, 4}) {
      for (int i = 0; i < COUNT; i++) {
        double even = i < 3 ? 0.209 + more * (off[i] - 0.209) : i < off.length ? off[i] : 0;
        heard[i] = 1 + i * 0.203 + even;
      }
      assertArrayEquals(runsFrom(3), runs(), "uneven by " + more);
    }
  }

  /** How many of 300 slips are found once and nowhere but where they are. */
  private int found(double jitter, int mostSpread) {
    double[] even = heard.clone();
    int found = 0;
    for (int number = 0; number < 300; number++) {
      SplittableRandom random = new SplittableRandom(number);
      int spread = random.nextInt(1, mostSpread + 1);
      int at = random.nextInt(6, COUNT - 6 - spread);
      double slip = random.nextBoolean() ? 0.2 : -0.2;
      for (int i = 0; i < COUNT; i++) {
        double share = Math.max(0, Math.min(1, (i - at + 1.0) / spread));
        heard[i] = even[i] + slip * share + jitter * random.nextGaussian();
      }
      int[] runs = runs();
      long before = IntStream.of(runs).filter(run -> run == 1).count();
      found += runs[COUNT - 1] == 2 && before >= at && before < at + spread ? 1 : 0;
    }
    System.arraycopy(even, 0, heard, 0, COUNT);
    return found;
  }

  /** A sollu that happens to be late or early before a slip is none of those on the way. */
  @Test
  void anUnevenTakeSlipsWhereItSlips() {
    assertTrue(found(0.004, 3) == 300, "uneven by 4 ms: " + found(0.004, 3));
    assertTrue(found(0.008, 3) >= 297, "uneven by 8 ms: " + found(0.008, 3));
    assertTrue(found(0.015, 1) >= 280, "uneven by 15 ms: " + found(0.015, 1));
  }

  /** Three sollus before it or after it are enough where the take begins or ends. */
  @Test
  void aSlipIsFoundFromTheFourthSolluToTheThirdLast() {
    double[] even = heard.clone();
    for (double slip : new double[] {-0.2, 0.2, 0.5}) {
      for (int at = 3; at <= COUNT - 3; at++) {
        for (int i = 0; i < COUNT; i++) {
          heard[i] = even[i] + (i < at ? 0 : slip);
        }
        assertArrayEquals(runsFrom(at), runs(), slip + " from " + at);
      }
    }
  }

  /** After a restart as well as at the beginning; six sollus before the slip. */
  @Test
  void aSlipAfterARestartIsAnotherRun() {
    for (int i = 12; i < COUNT; i++) {
      place[i] -= 8;
      beat[i] -= 2;
      heard[i] += i < 24 ? 1 : 1.2;
    }
    int[] asked = IntStream.range(0, COUNT).map(i -> i < 12 ? 1 : i < 24 ? 2 : 3).toArray();
    assertArrayEquals(asked, runs());
  }

  /** Sixteen matras of four, then twenty-four of five in a beat of 0.8 s. */
  private void sayFive(double slower, double drift, double jitter, SplittableRandom random) {
    double at = 1;
    for (int i = 0; i < COUNT; i++) {
      place[i] = i;
      boolean five = i >= 16;
      matra[i] = five ? 0.2 : 0.25;
      beat[i] = five ? 4 + (i - 16) / 5.0 : i / 4.0;
      heard[i] = at + jitter * random.nextGaussian();
      at += 0.8 * matra[i] * (five ? slower : 1) * (1 + drift * i / COUNT);
    }
  }

  /** The old speed is that of four: five a quarter slower. */
  @Test
  void anotherSpeedIsNoSlip() {
    int tried = 0;
    for (double slower : new double[] {0.9, 1, 1.05, 1.1, 1.25}) {
      for (double drift : new double[] {-0.05, 0, 0.05}) {
        for (int number = 0; number < 40; number++) {
          sayFive(slower, drift, 0.006, new SplittableRandom(number));
          assertArrayEquals(runsFrom(COUNT), runs(), slower + " " + drift + " " + number);
          tried++;
        }
      }
    }
    assertEquals(600, tried);
  }

  /** One sollu 0.11 s late, the next as early: the interval is more than half a matra too long. */
  @Test
  void oneUnevenIntervalIsNoSlip() {
    for (int at = 3; at < COUNT - 4; at++) {
      double[] kept = heard.clone();
      heard[at] -= 0.05;
      heard[at + 1] += 0.06;
      for (int i = at + 2; i < COUNT; i++) {
        heard[i] += 0.04;
      }
      assertArrayEquals(runsFrom(COUNT), runs(), "between " + at + " and the next");
      System.arraycopy(kept, 0, heard, 0, COUNT);
    }
  }

  /** Forty sollus of a matra each, later or earlier from one on, and uneven. */
  private int[] slipped(int at, double matras, double matraSeconds, double jitter, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < COUNT; i++) {
      double asked = 1 + matraSeconds * (i + (i < at ? 0 : matras));
      heard[i] = asked + jitter * random.nextGaussian();
    }
    return runs();
  }

  /** One, two or three sollus, then a matra too few or too many: they are a run of their own. */
  @Test
  void whatWasSaidBeforeAnEarlySlipStandsApart() {
    int tried = 0;
    int found = 0;
    for (int at = 1; at <= 3; at++) {
      for (double matras : new double[] {-1, 1, 1.5}) {
        assertArrayEquals(runsFrom(at), slipped(at, matras, 0.2, 0, 0), matras + " from " + at);
        for (long seed = 0; seed < 60; seed++) {
          found += Arrays.equals(runsFrom(at), slipped(at, matras, 0.15, 0.010, seed)) ? 1 : 0;
          tried++;
        }
      }
    }
    assertEquals(540, tried);
    assertTrue(found >= 535, found + " of " + tried);
  }

  /** A matra of 0.15 s, each sollu off by 25 ms for itself: few begin with a run of their own. */
  @Test
  void anUnevenBeginningIsNoSlip() {
    int apart = 0;
    for (long seed = 0; seed < 1_000; seed++) {
      int[] runs = slipped(COUNT, 0, 0.15, 0.025, seed);
      apart += runs[3] > 1 ? 1 : 0;
    }
    assertTrue(apart <= 10, apart + " of 1000");
  }

  /** A first sollu less than half a matra off is uneven, however exact all others are. */
  @Test
  void aFirstSolluALittleOffIsOfTheSameRun() {
    for (double off : new double[] {-0.45, -0.3, 0.3, 0.45, 0.6}) {
      for (int at = 1; at <= 3; at++) {
        if (at == 1 || Math.abs(off) < 0.5) {
          assertArrayEquals(runsFrom(COUNT), slipped(at, off, 0.2, 0, 0), off + " at " + at);
        }
      }
    }
  }
}
