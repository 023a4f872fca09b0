package org.matraloom.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ToleranceTest {

  /** Friberg and Sundberg, JASA 98 (1995) 2524: 6 ms below about 240 ms, 2.5 % above. */
  @Test
  void followsThePublishedDiscrimination() {
    double[][] published = {
      {125, 6}, {200, 6}, {240, 6}, {400, 10}, {500, 12.5}, {600, 15}, {1000, 25}
    };
    for (double[] point : published) {
      assertEquals(
          point[1] / 1000, Tolerance.displacementSeconds(point[0] / 1000), 1e-12, point[0] + " ms");
    }
  }

  /** 60 ms apart two onsets are almost always told apart (mazurka.org.uk, experiments page). */
  @Test
  void aLandingIsWithin60MsAndHalfAMatra() {
    assertEquals(0.060, Tolerance.landingSeconds(0.2), 1e-12);
    assertEquals(0.050, Tolerance.landingSeconds(0.1), 1e-12);
  }
}
