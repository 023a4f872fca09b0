package org.matraloom.onset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The published cases of two evaluation toolkits, and a check against exhaustive search. */
class OnsetMatchingTest {

  // mir_eval, tests/data/onset, cases 05, 07, 08 (times rounded to 0.1 ms), scores as published.
  private static final double[] REF_05 = {0.1945, 1.1286, 2.0239, 4.0797};
  private static final double[] EST_05 = {0.2438, 1.19, 2.0869, 4.1302, 4.6121};
  private static final double[] REF_07 = {
    0, 0.33, 0.496, 0.65, 0.96, 1.116, 1.278, 1.613, 1.933, 2.109, 2.25
  };
  private static final double[] EST_07 = {
    0.3122, 0.4544, 0.6053, 0.9478, 1.0726, 1.2526, 1.5689, 1.8882, 2.0653, 2.2481
  };
  private static final double[] REF_08 = {0.15, 0.628, 0.694, 1.141, 1.179, 1.299, 1.632, 2.105};
  private static final double[] EST_08 = {
    0.1771, 0.209, 0.4847, 0.6908, 0.8127, 1.1987, 1.2539, 1.3671, 1.6893, 2.1624, 3.0592
  };

  // madmom, tests of evaluation.onsets.
  private static final double[] MADMOM_FOUND = {
    0.99999999, 1.02999999, 1.45, 2.01, 2.02, 2.5, 3.025000001
  };
  private static final double[] MADMOM_TRUE = {1, 1.02, 1.5, 2.0, 2.03, 2.05, 2.5, 3};

  @Test
  void mirEvalCase05() {
    expect(REF_05, EST_05, 0.05, 1, 0.2, 0.25, 0.222222);
    assertEquals(0, OnsetMatching.within(REF_05, EST_05, 0.025).score().hits());
  }

  @Test
  void mirEvalCase07() {
    expect(REF_07, EST_07, 0.05, 10, 1, 0.909091, 0.952381);
    assertEquals(3, OnsetMatching.within(REF_07, EST_07, 0.025).score().hits());
  }

  @Test
  void mirEvalCase08() {
    expect(REF_08, EST_08, 0.05, 4, 0.363636, 0.5, 0.421053);
    assertEquals(2, OnsetMatching.within(REF_08, EST_08, 0.025).score().hits());
  }

  @Test
  void madmomCase() {
    for (double window : new double[] {0.01, 0.025}) {
      OnsetMatching matching = OnsetMatching.within(MADMOM_TRUE, MADMOM_FOUND, window);
      assertEquals(new OnsetScore(5, 2, 3), matching.score());
      assertEquals(2.0 / 3, matching.score().fMeasure(OnsetScore.Convention.WHOLE), 1e-12);
      assertArrayEquals(
          new double[] {0, 0.01, 0.01, -0.01, 0},
          matching.pairs().stream().mapToDouble(OnsetMatching.Pair::errorSeconds).toArray(),
          1e-6);
    }
    for (double window : new double[] {0.04, 0.05}) {
      OnsetScore score = OnsetMatching.within(MADMOM_TRUE, MADMOM_FOUND, window).score();
      assertEquals(new OnsetScore(6, 1, 2), score);
      assertEquals(0.8, score.fMeasure(OnsetScore.Convention.NOUGHT), 1e-12);
    }
  }

  @Test
  void emptyListsAreScoredByEitherConvention() {
    double[] none = {};
    OnsetScore both = OnsetMatching.within(none, none, 0.05).score();
    assertEquals(0, both.precision(OnsetScore.Convention.NOUGHT));
    assertEquals(0, both.recall(OnsetScore.Convention.NOUGHT));
    assertEquals(0, both.fMeasure(OnsetScore.Convention.NOUGHT));
    assertEquals(1, both.precision(OnsetScore.Convention.WHOLE));
    assertEquals(1, both.recall(OnsetScore.Convention.WHOLE));
    assertEquals(1, both.fMeasure(OnsetScore.Convention.WHOLE));
    OnsetScore nothingFound = OnsetMatching.within(REF_05, none, 0.05).score();
    assertEquals(1, nothingFound.precision(OnsetScore.Convention.WHOLE));
    assertEquals(0, nothingFound.fMeasure(OnsetScore.Convention.WHOLE));
    assertTrue(Double.isNaN(OnsetMatching.within(REF_05, none, 1).medianErrorSeconds()));
  }

  @Test
  void errorsAreSignedAndTheirMedianIsTaken() {
    OnsetMatching matching =
        OnsetMatching.within(new double[] {1, 2, 3}, new double[] {0.99, 2.02, 3.005}, 0.05);
    assertEquals(0.005, matching.medianErrorSeconds(), 1e-12);
    assertEquals(0.01, matching.medianAbsoluteErrorSeconds(), 1e-12);
  }

  @Test
  void noMatchingOfMoreOrNearerPairsExists() {
    SplittableRandom random = new SplittableRandom(20);
    int matched = 0;
    for (int round = 0; round < 400; round++) {
      double[] reference = times(random, random.nextInt(6));
      double[] found = times(random, random.nextInt(6));
      OnsetMatching matching = OnsetMatching.within(reference, found, 0.1);
      double cost =
          matching.pairs().stream().mapToDouble(pair -> Math.abs(pair.errorSeconds())).sum();
      double[] best = exhaustive(reference, found, 0, 0);
      assertEquals(best[0], matching.pairs().size(), "seed 20, round " + round);
      assertEquals(best[1], cost, 1e-12, "seed 20, round " + round);
      matched += matching.pairs().size();
    }
    assertTrue(matched > 300, "pairs were formed: " + matched);
  }

  @Test
  void timesMustAscend() {
    IllegalArgumentException error =
        assertThrows(
            IllegalArgumentException.class,
            () -> OnsetMatching.within(new double[] {1, 0.5}, REF_05, 0.05));
    assertEquals(
        "the true onsets must be finite and ascend; number 2 is 0.5 s", error.getMessage());
  }

  private static void expect(
      double[] reference,
      double[] found,
      double window,
      int hits,
      double precision,
      double recall,
      double fMeasure) {
    OnsetScore score = OnsetMatching.within(reference, found, window).score();
    assertEquals(hits, score.hits());
    assertEquals(precision, score.precision(OnsetScore.Convention.NOUGHT), 1e-6);
    assertEquals(recall, score.recall(OnsetScore.Convention.NOUGHT), 1e-6);
    assertEquals(fMeasure, score.fMeasure(OnsetScore.Convention.NOUGHT), 1e-6);
  }

  private static double[] times(SplittableRandom random, int count) {
    double[] times = random.doubles(count).toArray();
    Arrays.sort(times);
    return times;
  }

  /** Most pairs, then least total distance, by trying everything: {count, cost}. */
  private static double[] exhaustive(double[] reference, double[] found, int from, int used) {
    if (from == reference.length) {
      return new double[] {0, 0};
    }
    double[] best = exhaustive(reference, found, from + 1, used);
    for (int i = 0; i < found.length; i++) {
      double distance = Math.abs(found[i] - reference[from]);
      if ((used & 1 << i) == 0 && distance <= 0.1) {
        double[] rest = exhaustive(reference, found, from + 1, used | 1 << i);
        if (rest[0] + 1 > best[0] || (rest[0] + 1 == best[0] && rest[1] + distance < best[1])) {
          best = new double[] {rest[0] + 1, rest[1] + distance};
        }
      }
    }
    return best;
  }
}
