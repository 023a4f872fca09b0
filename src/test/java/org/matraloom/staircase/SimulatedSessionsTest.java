package org.matraloom.staircase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where sessions settle: at 70.7 % (Levitt 1971, table I), told apart by seeds kept for it. */
class SimulatedSessionsTest {

  private static final long KEPT_SEED = 20_001;

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void ninetyFiveOfAHundredSettleWithinAStepSoonerThanTheLadder(boolean learns) {
    SimulatedSessions.Result result = SimulatedSessions.of(KEPT_SEED, 100, learns);
    assertTrue(result.settled() >= 95, result.toString());
    assertTrue(result.came() < result.ladder(), result.toString());
    assertTrue(result.fewer() > 75, result.toString());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void thePointOfTheCurveIsWhereSevenOfTenAreClean(long seed) {
    SimulatedReciter reciter = new SimulatedReciter(seed, false);
    int clean = 0;
    for (int i = 0; i < 20_000; i++) {
      clean += reciter.isCleanAt(reciter.point()) ? 1 : 0;
    }
    assertEquals(0.7071, clean / 20_000.0, 0.012);
  }
}
