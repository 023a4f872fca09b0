package org.matraloom.pulse;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Straight lines with a bend, found again in times that were made of them. */
class BentFitTest {

  private static final DoubleUnaryOperator AFTER_TEN = beat -> Math.max(0, beat - 10);

  private static double[] beats(int count) {
    return IntStream.range(0, count).mapToDouble(k -> 3 + k / 4.0).toArray();
  }

  private static int[] runs(int count, int secondFrom) {
    return IntStream.range(0, count).map(k -> k < secondFrom ? 1 : 2).toArray();
  }

  @Test
  void whatTimesWereMadeOfIsFound() {
    double[] beat = beats(60);
    for (double bend : new double[] {0, 0.04, -0.05}) {
      double[] at =
          Arrays.stream(beat).map(b -> 2 + 0.8 * b + bend * AFTER_TEN.applyAsDouble(b)).toArray();
      int[] run = runs(60, 40);
      IntStream.range(40, 60).forEach(k -> at[k] += 0.7);
      at[5] += 0.3;
      BentFit fit = BentFit.of(beat, at, run, AFTER_TEN);
      double[] off = new double[60];
      off[5] = 0.3;
      assertArrayEquals(off, fit.offSeconds(), 1e-9, "bend of " + bend);
      assertEquals(2 + 0.8 * 25, fit.secondsAt(25, 3, 1), 1e-9, "carried on without the bend");
      assertEquals(2 + 0.8 * 25 + bend * 15, fit.secondsAt(25, 25, 1), 1e-9);
      assertEquals(2.7 + 0.8 * 25 + bend * 15, fit.secondsAt(25, 25, 2), 1e-9);
    }
  }

  /** A number of which nothing is said stays 0: without a bend, or with all before it. */
  @Test
  void aBendThatNobodySaidIsNone() {
    double[] beat = beats(20);
    double[] at = Arrays.stream(beat).map(b -> 0.8 * b).toArray();
    for (DoubleUnaryOperator bend : new DoubleUnaryOperator[] {BentFit.STRAIGHT, AFTER_TEN}) {
      BentFit fit = BentFit.of(beat, at, runs(20, 20), bend);
      assertEquals(0.8 * 30, fit.secondsAt(30, 30, 1), 1e-9);
    }
  }

  /**
   * The variance of a carried straight line as a share of that of one sollu is 1/n + (x - mean)² /
   * sum of squares (textbook formula, from memory); of times made anew it is what is found.
   */
  @Test
  void theVarianceIsThatOfLeastSquares() {
    double[] beat = beats(40);
    double mean = Arrays.stream(beat).average().orElseThrow();
    double squares = Arrays.stream(beat).map(b -> (b - mean) * (b - mean)).sum();
    double[] exact = Arrays.stream(beat).map(b -> 0.8 * b).toArray();
    BentFit even = BentFit.of(beat, exact, runs(40, 40), BentFit.STRAIGHT);
    double asked = 1.0 / 40 + (20 - mean) * (20 - mean) / squares;
    assertEquals(asked, even.share(20, 20, 1), 1e-6);
    SplittableRandom random = new SplittableRandom(7);
    double[] shares = {0, 0};
    int tries = 400;
    for (int tried = 0; tried < tries; tried++) {
      double[] at = Arrays.stream(exact).map(t -> t + 0.02 * random.nextGaussian()).toArray();
      BentFit broken = BentFit.of(beat, at, runs(40, 40), beat0 -> Math.max(0, beat0 - 8));
      shares[0] += Math.pow((broken.secondsAt(20, 3, 1) - 16) / 0.02, 2) / tries;
      shares[1] += broken.share(20, 3, 1) / tries;
    }
    assertEquals(1, shares[0] / shares[1], 0.25, Arrays.toString(shares));
  }
}
