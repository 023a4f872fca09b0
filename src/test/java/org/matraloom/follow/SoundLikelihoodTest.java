package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The evidence of sounds against the density of the normal distribution of many numbers, reckoned
 * out in full (textbook formula, from memory): in each sollu the covariance is {@code within * I +
 * between * J}, of sounds without order it is the identity.
 */
class SoundLikelihoodTest {

  private static final double TRUST = 0.16;
  private static final double WITHIN = 0.65;

  /** The logarithm of a normal density about 0 but for the powers of 2 pi, by Cholesky's root. */
  private static double logDensity(double[] value, double[][] covariance) {
    int size = value.length;
    double[][] root = new double[size][size];
    double[] white = new double[size];
    double log = 0;
    for (int i = 0; i < size; i++) {
      for (int j = 0; j <= i; j++) {
        double rest = covariance[i][j];
        for (int k = 0; k < j; k++) {
          rest -= root[i][k] * root[j][k];
        }
        root[i][j] = i == j ? Math.sqrt(rest) : rest / root[j][j];
      }
      double off = value[i];
      for (int k = 0; k < i; k++) {
        off -= root[i][k] * white[k];
      }
      white[i] = off / root[i][i];
      log -= white[i] * white[i] / 2 + Math.log(root[i][i]);
    }
    return log;
  }

  /** What one number of all sounds says, group by group. */
  private static double full(int[] kinds, double[] numbers) {
    double mean = Arrays.stream(numbers).average().orElseThrow();
    double variance =
        Arrays.stream(numbers).map(x -> (x - mean) * (x - mean)).average().orElseThrow();
    double[] standard = Arrays.stream(numbers).map(x -> (x - mean) / Math.sqrt(variance)).toArray();
    double log = 0;
    for (int kind : Arrays.stream(kinds).distinct().toArray()) {
      double[] own =
          IntStream.range(0, kinds.length)
              .filter(i -> kinds[i] == kind)
              .mapToDouble(i -> standard[i])
              .toArray();
      double[][] apart = new double[own.length][own.length];
      double[][] one = new double[own.length][own.length];
      for (int i = 0; i < own.length; i++) {
        Arrays.fill(apart[i], 1 - WITHIN);
        apart[i][i] = 1;
        one[i][i] = 1;
      }
      log += logDensity(own, apart) - logDensity(own, one);
    }
    return log;
  }

  private static List<Alignment.Said> all(int count) {
    return IntStream.range(0, count).mapToObj(k -> new Alignment.Said(k, k)).toList();
  }

  /** The root itself, on a matrix whose determinant and inverse are known: [[4, 2], [2, 3]]. */
  @Test
  void theDensityIsThatOfATableWorkedOutByHand() {
    double square = (3 * 1 - 2 * 2 * 1 * 2 + 4 * 2 * 2) / 8.0;
    double[][] covariance = {{4, 2}, {2, 3}};
    assertEquals(-square / 2 - Math.log(8) / 2, logDensity(new double[] {1, 2}, covariance), 1e-12);
  }

  @Test
  void theEvidenceIsTheLikelihoodOfTwoLevels() {
    int told = 0;
    int silent = 0;
    for (int seed = 0; seed < 200; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      int count = random.nextInt(8, 20);
      int numbers = random.nextInt(1, 4);
      int most = random.nextInt(2, 6);
      int[] kinds = IntStream.range(0, count).map(k -> random.nextInt(most)).toArray();
      double[][] colours = new double[count][numbers];
      double blur = random.nextDouble(0.1, 1.5);
      double log = 0;
      for (int d = 0; d < numbers; d++) {
        double[] own = random.doubles(most, -3, 3).toArray();
        for (int k = 0; k < count; k++) {
          colours[k][d] = 5 + own[kinds[k]] + blur * random.nextGaussian();
        }
        int number = d;
        log += full(kinds, Arrays.stream(colours).mapToDouble(c -> c[number]).toArray());
      }
      double evidence = SoundEvidence.of(new SoundColours(colours), kinds, all(count));
      assertEquals(Math.max(0, TRUST * log), evidence, 1e-9, "seed " + seed);
      told += log > 0 ? 1 : 0;
      silent += log < 0 ? 1 : 0;
    }
    assertTrue(told > 100 && silent > 10, told + " told, " + silent + " not");
  }

  /** Sixteen sounds: words of eight said twice, each sollu with a colour of eighteen numbers. */
  @Test
  void sixteenSoundsTellWordsFromTheSameShifted() {
    int[] word = {0, 1, 2, 3, 0, 1, 4, 5};
    int[] kinds = IntStream.range(0, 16).map(k -> word[k % 8]).toArray();
    int tried = 0;
    int right = 0;
    for (int seed = 0; seed < 100; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      double[][] own = new double[6][18];
      for (double[] colour : own) {
        Arrays.setAll(colour, d -> random.nextGaussian());
      }
      double[][] colours = new double[16][18];
      for (int j = 0; j < 16; j++) {
        double[] middle = own[kinds[j]];
        Arrays.setAll(colours[j], d -> middle[d] + 0.7 * random.nextGaussian());
      }
      SoundColours heard = new SoundColours(colours);
      double asSaid = SoundEvidence.of(heard, kinds, all(16));
      for (int by : new int[] {1, 2, 3}) {
        int[] shifted = IntStream.range(0, 16).map(k -> word[(k + by) % 8]).toArray();
        right += asSaid > SoundEvidence.of(heard, shifted, all(16)) ? 1 : 0;
        tried++;
      }
    }
    assertEquals(300, tried);
    assertTrue(right >= 297, right + " of " + tried);
  }
}
