package org.matraloom.retell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SlowMapTest {

  @Test
  void withoutAnchorsAllIsSlowedAlike() {
    SlowMap map = new SlowMap(0.6, List.of());
    assertEquals(6, map.inputAt(10), 1e-12);
    assertEquals(10, map.slowed(6), 1e-12);
    assertEquals(-1, map.keptAt(10));
  }

  @Test
  void aroundAnAnchorSoundGoesAtItsOwnSpeedAndItsFeltBeatIsExact() {
    SlowMap map =
        new SlowMap(
            0.5, List.of(new SlowMap.AnchorPoint(1, 1.02), new SlowMap.AnchorPoint(2, 2.02)));
    assertEquals(1.02, map.inputAt(2.04), 1e-12);
    assertEquals(1.00, map.inputAt(2.02), 1e-12);
    assertEquals(1.03, map.inputAt(2.05), 1e-12);
    assertEquals(0, map.keptAt(2.04));
    assertEquals(1, map.keptAt(4.04));
    assertEquals(-1, map.keptAt(3));
  }

  /** Seeded: anchors at random, many of them too near one another. */
  @Test
  void timeNeverStandsStillOrRunsBack() {
    SplittableRandom random = new SplittableRandom(99);
    int checked = 0;
    for (int round = 0; round < 200; round++) {
      List<SlowMap.AnchorPoint> anchors = new ArrayList<>();
      for (int i = 0; i < 30; i++) {
        double onset = random.nextDouble(0.01, 4);
        anchors.add(new SlowMap.AnchorPoint(onset, onset + random.nextDouble(0, 0.06)));
      }
      double speed = random.nextDouble(0.25, 1);
      SlowMap map = new SlowMap(speed, anchors);
      double before = map.inputAt(0);
      for (double out = 0.001; out < 4 / speed; out += 0.001) {
        double now = map.inputAt(out);
        assertTrue(now > before - 1e-12, "at " + out);
        assertTrue(now - before < 0.0011, "never faster than it was said");
        before = now;
        checked++;
      }
    }
    assertTrue(checked > 100_000);
  }
}
