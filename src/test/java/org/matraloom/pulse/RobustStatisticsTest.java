package org.matraloom.pulse;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RobustStatisticsTest {

  @Test
  void theMedianIsTheMiddle() {
    assertEquals(0, RobustStatistics.median());
    assertEquals(3, RobustStatistics.median(9, 1, 3));
    assertEquals(2.5, RobustStatistics.median(4, 1, 2, 3));
  }

  /** Deviations from 2 are 1, 0, 1, 98: their median is 1, times 1.4826. */
  @Test
  void oneWrongValueHardlyCounts() {
    assertEquals(1.4826, RobustStatistics.spread(1, 2, 3, 2, 100), 1e-9);
    assertEquals(2.9652, RobustStatistics.spreadAroundZero(-2, 2, 100), 1e-9);
  }
}
