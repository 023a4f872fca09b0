package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.time.Tempo;

/** A tempo is heard from taps, though people tap unevenly. */
class TapTempoTest {

  private static final long MS = 1_000_000;

  @Test
  void fourEvenTapsGiveTheTempo() {
    TapTempo taps = new TapTempo();
    assertEquals(Optional.empty(), taps.tap(0));
    assertEquals(Optional.empty(), taps.tap(750 * MS));
    assertEquals(Optional.empty(), taps.tap(1_500 * MS));
    assertEquals(Optional.of(Tempo.of(80)), taps.tap(2_250 * MS));
  }

  /** Musicians' taps scatter by about 2 to 4 percent of the gap (from memory). */
  @ParameterizedTest
  @ValueSource(ints = {40, 66, 80, 110, 150})
  void unevenTapsGiveItNearly(int tempo) {
    SplittableRandom random = new SplittableRandom(tempo);
    TapTempo taps = new TapTempo();
    Optional<Tempo> heard = Optional.empty();
    for (int tap = 0; tap < 8; tap++) {
      long exact = tap * 60_000 * MS / tempo;
      heard = taps.tap(exact + (long) (random.nextDouble(-0.015, 0.015) * 60_000 * MS / tempo));
    }
    double beats = heard.orElseThrow().beatsPerMinute().toDouble();
    assertEquals(tempo, beats, 0.02 * tempo);
  }

  @Test
  void oneBadTapDoesNoHarm() {
    TapTempo taps = new TapTempo();
    long[] atMs = {0, 600, 1_200, 1_950, 2_400, 3_000, 3_600};
    Optional<Tempo> heard = Optional.empty();
    for (long at : atMs) {
      heard = taps.tap(at * MS);
    }
    assertEquals(Optional.of(Tempo.of(100)), heard);
  }

  @Test
  void aLongPauseBeginsAnew() {
    TapTempo taps = new TapTempo();
    for (long at : new long[] {0, 500, 1_000, 1_500}) {
      taps.tap(at * MS);
    }
    assertEquals(Optional.empty(), taps.tap(10_000 * MS));
    assertEquals(Optional.empty(), taps.tap(11_000 * MS));
    assertEquals(Optional.empty(), taps.tap(12_000 * MS));
    assertEquals(Optional.of(Tempo.of(60)), taps.tap(13_000 * MS));
  }

  @Test
  void aFlurryOfTapsStaysInRange() {
    TapTempo taps = new TapTempo();
    Optional<Tempo> heard = Optional.empty();
    for (int tap = 0; tap < 9; tap++) {
      heard = taps.tap(tap * MS);
    }
    assertEquals(Optional.of(Tempo.of(Tempo.FASTEST)), heard);
    assertTrue(heard.isPresent());
  }
}
