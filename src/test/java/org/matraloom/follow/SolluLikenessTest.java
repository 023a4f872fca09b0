package org.matraloom.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class SolluLikenessTest {

  private static double[] at(double x) {
    return new double[] {x};
  }

  /**
   * Groups 1, 3 and 7, 9: means 2 and 8 around 5. Between 2 * 9 + 2 * 9 = 36, by 1; within 4 times
   * 1 = 4, by 2. The ratio is 18.
   */
  @Test
  void variancesAreCompared() {
    assertEquals(
        18, SolluLikeness.ratio(List.of(List.of(at(1), at(3)), List.of(at(7), at(9)))), 1e-12);
  }

  @Test
  void tooLittleTellsNothing() {
    assertEquals(1, SolluLikeness.ratio(List.of(List.of(at(1), at(3)))));
    assertEquals(1, SolluLikeness.ratio(List.of()));
  }
}
