package org.matraloom.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A device that tells in steps and late is known to within a fraction of a step. */
class FrameCounterTest {

  private static final int RATE = 48_000;
  private static final long MS = 1_000_000;

  /** Clocks of sound cards differ by some tens of millionths (common practice). */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-4, -1e-4})
  void stepsAreSmoothedAndADriftIsFollowed(double drift) {
    FrameCounter counter = new FrameCounter(RATE);
    SplittableRandom random = new SplittableRandom(3);
    long nanos = 5_000 * MS;
    long begun = nanos;
    double worst = 0;
    long before = 0;
    for (int look = 0; look < 300_000; look++) {
      nanos += random.nextLong(MS, 3 * MS);
      double done = (nanos - begun) * 1e-9 * RATE * (1 + drift);
      long told = (long) done / 480 * 480;
      counter.report(told, Long.MAX_VALUE, nanos);
      long frames = counter.frames(nanos + MS / 2);
      assertTrue(frames >= before, "never less than before");
      before = frames;
      if (look > 1_000) {
        worst = Math.max(worst, Math.abs(frames - done - 0.0005 * RATE));
      }
    }
    assertTrue(worst < 0.0035 * RATE, "worst " + worst + " frames over ten minutes");
  }

  @Test
  void noMoreIsToldThanTheDeviceWasGiven() {
    FrameCounter counter = new FrameCounter(RATE);
    counter.report(100, 1_000, 0);
    assertEquals(100, counter.frames(0));
    assertEquals(580, counter.frames(10 * MS));
    assertEquals(1_000, counter.frames(1_000 * MS));
  }

  @Test
  void theTimeBeforeTheFirstStepDoesNotCount() {
    FrameCounter counter = new FrameCounter(RATE);
    for (long ms = 0; ms <= 330; ms += 2) {
      counter.report(0, 20_000, ms * MS);
    }
    assertTrue(counter.frames(331 * MS) <= 48);
    counter.report(480, 20_000, 341 * MS);
    counter.report(480, 20_000, 343 * MS);
    counter.report(960, 20_000, 351 * MS);
    assertEquals(960 + 48, counter.frames(352 * MS), 2);
  }

  @Test
  void aDeviceThatStoodStillIsFollowed() {
    FrameCounter counter = new FrameCounter(RATE);
    for (int step = 0; step < 100; step++) {
      counter.report(480L * step, Long.MAX_VALUE, step * 10 * MS);
    }
    counter.report(480L * 100, Long.MAX_VALUE, 1_300 * MS);
    counter.report(480L * 101, Long.MAX_VALUE, 1_310 * MS);
    counter.report(480L * 150, Long.MAX_VALUE, 1_800 * MS);
    assertEquals(480L * 151, counter.frames(1_810 * MS), 10);
  }

  @Test
  void afterAPauseTheNextReportCounts() {
    FrameCounter counter = new FrameCounter(RATE);
    counter.report(0, Long.MAX_VALUE, 0);
    counter.report(480, Long.MAX_VALUE, 10 * MS);
    counter.pause();
    counter.report(480, Long.MAX_VALUE, 500 * MS);
    assertEquals(480 + 480, counter.frames(510 * MS));
  }
}
