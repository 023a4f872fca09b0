package org.matraloom.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Silences that a made-up device puts in are found and measured; a busy device puts in none. */
class GapFinderTest {

  private static final int RATE = 48_000;
  private static final long MS = 1_000_000;
  private static final double TOLERANCE = 0.003 * RATE;

  private final GapFinder finder = new GapFinder(RATE);
  private final SplittableRandom random = new SplittableRandom(11);
  private final long begun = 7_000 * MS;
  private long nanos = begun;
  private double silentFrames;

  /** The device goes on for a while, telling in steps of 10 ms, looked at every 1 to 4 ms. */
  private void goOn(long ms, double drift) {
    long end = nanos + ms * MS;
    while (nanos < end) {
      nanos += random.nextLong(MS, 4 * MS);
      long told = (long) heard(drift) / 480 * 480;
      finder.report(told, told + RATE / 7, nanos);
    }
  }

  private double heard(double drift) {
    return (nanos - begun) * 1e-9 * RATE * (1 + drift) - silentFrames;
  }

  /** The device tells nothing new, and has then eaten what it had and waited. */
  private void standStill(long ms, long queueMs) {
    double before = heard(0);
    long told = (long) before / 480 * 480;
    long end = nanos + ms * MS;
    while (nanos < end) {
      nanos += random.nextLong(MS, 4 * MS);
      finder.report(told, told + queueMs * RATE / 1000, nanos);
    }
    silentFrames += Math.max(0, heard(0) - before - queueMs * RATE / 1000.0);
  }

  /** Clocks of sound cards differ by some tens of millionths (common practice). */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-4, -1e-4})
  void aDeviceThatDriftsPutsNothingIn(double drift) {
    goOn(600_000, drift);
    assertEquals(0, finder.gaps().count());
  }

  @Test
  void aDeviceThatIsLateAndCatchesUpPutsNothingIn() {
    goOn(3_000, 0);
    for (int i = 0; i < 20; i++) {
      standStill(random.nextLong(20, 300), 350);
      goOn(random.nextLong(40, 3_000), 0);
    }
    assertEquals(0, silentFrames);
    assertEquals(List.of(), finder.gaps().all());
  }

  /** From 19 to 420 ms, as they were seen on a busy machine. */
  @ParameterizedTest
  @ValueSource(longs = {19, 60, 165, 420, 2_000})
  void aSilenceIsFoundAndMeasured(long ms) {
    goOn(3_000, 0);
    final double before = heard(0);
    standStill(140 + ms, 140);
    goOn(3_000, 0);
    assertEquals(1, finder.gaps().count());
    DeviceGap gap = finder.gaps().all().get(0);
    assertTrue(silentFrames >= ms * RATE / 1000.0, "the device did wait");
    assertEquals(silentFrames, gap.frames(), TOLERANCE);
    assertEquals(before, gap.atFrame(), 0.025 * RATE, "until then it was on time");
    assertEquals(gap.frames(), finder.gaps().silentFrames());
  }

  @Test
  void everySilenceOfManyIsFound() {
    goOn(2_000, 0);
    for (int i = 0; i < 50; i++) {
      standStill(random.nextLong(160, 600), 140);
      goOn(random.nextLong(2_500, 5_000), 0);
    }
    assertEquals(50, finder.gaps().count());
    assertEquals(silentFrames, finder.gaps().silentFrames(), 50 * 0.0012 * RATE);
  }

  /** On a machine that is very busy every look may come late for a while. */
  @Test
  void whatWasTakenForASilenceIsTakenBackWhenTheDeviceCatchesUp() {
    goOn(3_000, 0);
    long late = 9 * MS;
    for (long end = nanos + 2_500 * MS; nanos < end; ) {
      nanos += random.nextLong(MS, 4 * MS);
      long told = (long) heard(0) / 480 * 480;
      finder.report(told, told + RATE / 7, nanos + late);
    }
    assertEquals(1, finder.gaps().count());
    nanos += late;
    goOn(1_000, 0);
    assertEquals(0, finder.gaps().count());
    assertEquals(0, finder.gaps().silentFrames());
    standStill(340, 140);
    goOn(3_000, 0);
    assertEquals(1, finder.gaps().count());
    assertEquals(silentFrames, finder.gaps().silentFrames(), TOLERANCE);
  }

  @Test
  void aDeviceThatIsSeenEmptyIsToldAtOnceAndMeasuredLater() {
    goOn(3_000, 0);
    final long given = (long) heard(0) + 140 * RATE / 1000;
    standStill(300, 140);
    finder.ranDry(given);
    finder.ranDry(given);
    assertEquals(List.of(new DeviceGap(given, 0)), finder.gaps().all());
    goOn(2_000, 0);
    assertEquals(1, finder.gaps().count());
    assertEquals(given, finder.gaps().all().get(0).atFrame());
    assertEquals(silentFrames, finder.gaps().silentFrames(), TOLERANCE);
  }

  @Test
  void aSilenceSoonAfterTheBeginningIsMeasuredIfTheDeviceIsSeenEmpty() {
    goOn(200, 0);
    long given = (long) heard(0) + 140 * RATE / 1000;
    standStill(440, 140);
    finder.ranDry(given);
    goOn(2_000, 0);
    assertEquals(1, finder.gaps().count());
    assertEquals(silentFrames, finder.gaps().silentFrames(), 0.010 * RATE, "a step of its count");
  }

  @Test
  void afterAPauseTheDeviceIsWatchedAnew() {
    goOn(3_000, 0);
    finder.pause();
    nanos += 5_000 * MS;
    silentFrames += 5 * RATE;
    goOn(3_000, 0);
    assertEquals(0, finder.gaps().count());
  }

  @Test
  void moreThanAreKeptAreCounted() {
    DeviceGaps gaps = new DeviceGaps();
    for (int i = 0; i < 1_500; i++) {
      gaps.begin(i);
      gaps.end(10);
    }
    assertEquals(1_500, gaps.count());
    assertEquals(15_000, gaps.silentFrames());
    assertEquals(1_000, gaps.all().size());
    assertEquals(new DeviceGap(999, 10), gaps.all().get(999));
  }
}
