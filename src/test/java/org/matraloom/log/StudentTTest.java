package org.matraloom.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentTTest {

  /** M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), table 26.10. */
  @ParameterizedTest
  @CsvSource({
    "12.706, 1, 0.05",
    "63.657, 1, 0.01",
    "4.303, 2, 0.05",
    "9.925, 2, 0.01",
    "3.182, 3, 0.05",
    "2.776, 4, 0.05",
    "2.262, 9, 0.05",
    "3.250, 9, 0.01",
    "3.169, 10, 0.01",
    "2.042, 30, 0.05",
  })
  void chancesAreThoseOfThePublishedTable(double t, int degrees, double chance) {
    assertEquals(chance, StudentT.chance(t, degrees), chance / 500);
    assertEquals(chance, StudentT.chance(-t, degrees), chance / 500);
  }

  @Test
  void fartherIsLessLikely() {
    for (int degrees = 1; degrees <= 200; degrees++) {
      assertEquals(1, StudentT.chance(0, degrees), 1e-12);
      double before = 1;
      for (double t = 0.5; t < 6; t += 0.5) {
        double chance = StudentT.chance(t, degrees);
        assertTrue(chance < before && chance > 0, t + " with " + degrees);
        before = chance;
      }
    }
  }
}
