package org.matraloom.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RankTrendTest {

  /**
   * M. G. Kendall, Rank Correlation Methods, table of the chances of S (4th ed. 1975), as it is
   * printed in textbooks of the rank test; from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "4, 6, 0.042",
    "5, 8, 0.042",
    "5, 10, 0.0083",
    "6, 11, 0.028",
    "8, 16, 0.031",
    "8, 18, 0.016",
    "10, 21, 0.036",
    "10, 23, 0.023",
    "10, 25, 0.014",
  })
  void chancesAreThoseOfThePublishedTable(int count, int sum, double chance) {
    assertEquals(chance, RankTrend.chance(count, sum), 0.0006);
  }

  /** Of the 24 orders of four, one has no pair that falls and three have one. */
  @Test
  void chancesOfFourAreCountedByHand() {
    assertEquals(1 / 24.0, RankTrend.chance(4, 6), 1e-12);
    assertEquals(4 / 24.0, RankTrend.chance(4, 4), 1e-12);
    assertEquals(1, RankTrend.chance(4, -6), 1e-12);
  }

  /** Five in order: 2 of 120 orders, 0.017; with one pair exchanged 2 * 5 of 120, 0.083. */
  @Test
  void fiveInOrderAreATrendAndFourAreNot() {
    assertEquals(0, RankTrend.of(1, 2, 3, 4));
    assertEquals(1, RankTrend.of(1, 2, 3, 4, 5));
    assertEquals(-1, RankTrend.of(5, 4, 3, 2, 1));
    assertEquals(0, RankTrend.of(2, 1, 3, 4, 5));
    assertEquals(0, RankTrend.of());
  }

  /**
   * Four ties of two: 24 pairs fall; the variance is (8 * 7 * 21 - 4 * 2 * 9) / 18 = 61.33, and 23
   * by its root 2.94. Ten alike have no trend; a step of three and three has 9 pairs that fall, a
   * variance of (6 * 5 * 17 - 2 * 3 * 2 * 11) / 18 = 21, and 8 by its root is 1.75.
   */
  @Test
  void tiesAreCountedByHand() {
    double[] fours = {5, 5, 4, 4, 3, 3, 2, 2};
    assertEquals(-24, RankTrend.sum(fours));
    assertEquals(-1, RankTrend.of(fours));
    assertEquals(0, RankTrend.of(7, 7, 7, 7, 7, 7, 7, 7, 7, 7));
    assertEquals(0, RankTrend.of(9, 9, 9, 1, 1, 1));
  }

  /** Above what is counted out the normal curve goes on; forty in order are no chance. */
  @Test
  void manyAreToldToo() {
    double[] rising = new double[40];
    for (int i = 0; i < rising.length; i++) {
      rising[i] = i;
    }
    assertEquals(1, RankTrend.of(rising));
  }
}
