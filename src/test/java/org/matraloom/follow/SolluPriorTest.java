package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is learnt of a few sounds, against a normal prior updated sound by sound. */
class SolluPriorTest {

  private static final double TRUST = 0.35;
  private static final double WITHIN = 0.4;
  private static final double SOUNDS = 30;
  private static final double MOST = 1.5;

  /** Sounds of one number each; the kinds take turns, so that every one is heard as often. */
  private static SoundColours drawn(int[] kinds, double[] own, double blur, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    return new SoundColours(
        IntStream.of(kinds)
            .mapToObj(kind -> new double[] {own[kind] + blur * random.nextGaussian()})
            .toArray(double[][]::new));
  }

  private static int[] inTurn(int kinds, int times) {
    return IntStream.range(0, kinds * times).map(k -> k % kinds).toArray();
  }

  private static List<Alignment.Said> all(int count) {
    return IntStream.range(0, count).mapToObj(k -> new Alignment.Said(k, k)).toList();
  }

  private static double logNormal(double off, double variance) {
    return -(off * off / variance + Math.log(variance)) / 2;
  }

  /**
   * The mean of a sollu has a normal prior, and each sound makes it surer (the update of a normal
   * mean by one observation after another: any textbook, from memory); how likely the next sound is
   * follows, against that of any.
   */
  @Test
  void aSoundIsAsLikelyAsAfterThePriorWasUpdated() {
    int tried = 0;
    int bounded = 0;
    for (int seed = 0; seed < 40; seed++) {
      int[] kinds = inTurn(3, 3 + seed % 5);
      double[] own = {-2, 0.5, 1.5};
      SoundColours colours = drawn(kinds, own, 0.3 + 0.02 * seed, seed);
      SolluModels models = SolluModels.of(colours, kinds, all(kinds.length));
      double[] x = Arrays.stream(colours.ofOnset()).mapToDouble(c -> c[0]).toArray();
      double mean = Arrays.stream(x).average().orElseThrow();
      double total = Arrays.stream(x).map(v -> (v - mean) * (v - mean)).average().orElseThrow();
      double squares = 0;
      for (int kind = 0; kind < 3; kind++) {
        double[] group = ofKind(x, kinds, kind);
        double middle = Arrays.stream(group).average().orElseThrow();
        squares += Arrays.stream(group).map(v -> (v - middle) * (v - middle)).sum();
      }
      double within = (SOUNDS * WITHIN * total + squares) / (SOUNDS + x.length - 3);
      for (int k = 0; k < 3; k++) {
        double middle = mean;
        double unsure = total - within;
        for (double sound : ofKind(x, kinds, k)) {
          double share = unsure / (unsure + within);
          middle += share * (sound - middle);
          unsure *= 1 - share;
        }
        for (int j = 0; j < x.length; j++) {
          double asked =
              TRUST * (logNormal(x[j] - middle, within + unsure) - logNormal(x[j] - mean, total));
          double bound = Math.max(-MOST, Math.min(MOST, asked));
          assertEquals(bound, models.gain(k, j), 1e-6, "sollu " + k + ", sound " + j);
          bounded += bound != asked ? 1 : 0;
          tried++;
        }
      }
    }
    assertTrue(tried > 1_000, tried + " sounds");
    assertTrue(bounded > 0 && bounded < tried / 2, bounded + " of " + tried + " bounded");
  }

  private static double[] ofKind(double[] x, int[] kinds, int kind) {
    return IntStream.range(0, x.length)
        .filter(i -> kinds[i] == kind)
        .mapToDouble(i -> x[i])
        .toArray();
  }

  /** Three sounds that happen to be the same do not make their sollu as narrow as that. */
  @Test
  void threeSoundsAlikeDoNotShutOutAFourth() {
    double[][] colours = {{-1}, {1}, {-1}, {1}, {-1}, {1}, {-0.5}, {0.5}};
    int[] kinds = {0, 1, 0, 1, 0, 1, 0, 1};
    SolluModels models = SolluModels.of(new SoundColours(colours), kinds, all(6));
    assertTrue(models.gain(0, 6) > 0, "half as far from the middle: " + models.gain(0, 6));
    assertTrue(models.gain(1, 7) > 0, "" + models.gain(1, 7));
    assertTrue(models.gain(0, 7) < 0, "" + models.gain(0, 7));
  }

  /** Twenty numbers, and a sound that is far from all: it may say more only where that is asked. */
  @Test
  void whatASingleSoundSaysIsBounded() {
    int[] kinds = inTurn(2, 6);
    double[][] colours = new double[14][20];
    SplittableRandom random = new SplittableRandom(2);
    for (int j = 0; j < 12; j++) {
      double own = kinds[j];
      Arrays.setAll(colours[j], d -> own * (d % 2 == 0 ? 1 : -1) + 0.1 * random.nextGaussian());
    }
    Arrays.setAll(colours[12], d -> d % 3 == 0 ? 4 : -4);
    Arrays.setAll(colours[13], d -> d % 2 == 0 ? 1 : -1);
    SolluModels models = SolluModels.of(new SoundColours(colours), kinds, all(12));
    assertEquals(-MOST, models.gain(0, 12));
    assertEquals(-MOST, models.gain(1, 12));
    assertEquals(-MOST, models.likest(12));
    assertTrue(models.likestOfAll(12) < -2 * MOST, "" + models.likestOfAll(12));
    assertEquals(MOST, models.gain(1, 13));
    assertEquals(MOST, models.likest(13));
    assertTrue(models.likestOfAll(13) > MOST, "" + models.likestOfAll(13));
    assertEquals(0, models.fallsShort(1, 13), 1e-12, "the likest falls short of nothing");
    assertTrue(models.fallsShort(0, 13) > 2 * MOST, "" + models.fallsShort(0, 13));
  }

  /** A sollu heard twice is not known, and nothing falls short of what is not known. */
  @Test
  void whatIsNotKnownSaysNothing() {
    double[][] colours = {{-1}, {1}, {-1.1}, {1.2}, {-1}, {0.9}, {4}, {4.1}};
    int[] kinds = {0, 1, 0, 1, 0, 1, 2, 2};
    SolluModels models = SolluModels.of(new SoundColours(colours), kinds, all(8));
    assertEquals(false, models.isKnown(6));
    assertEquals(0, models.gain(6, 0));
    assertEquals(0, models.fallsShort(6, 0));
    assertTrue(models.fallsShort(0, 1) > 0);
    SolluModels nothing = SolluModels.unknown(8);
    assertEquals(0, nothing.likestOfAll(3));
    assertEquals(0, nothing.fallsShort(2, 3));
  }
}
