package org.matraloom.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tempo of the beat and its limits. */
class TempoTest {

  /** Arithmetic: a beat lasts 60 seconds divided by the beats a minute. */
  @ParameterizedTest
  @CsvSource({"60, 1, 1", "80, 3, 4", "66, 10, 11", "71, 60, 71", "200, 3, 10", "5, 12, 1"})
  void aBeatLastsSixtySecondsOverTheTempo(long beatsPerMinute, long num, long den) {
    assertEquals(new Ratio(num, den), Tempo.of(beatsPerMinute).secondsOf(Ratio.ONE));
  }

  @Test
  void thereAndBackIsTheSame() {
    for (long bpm : new long[] {5, 66, 71, 600}) {
      Tempo tempo = Tempo.of(bpm);
      Ratio beats = new Ratio(37, 35);
      assertEquals(beats, tempo.beatsIn(tempo.secondsOf(beats)));
      assertEquals(tempo.beatsIn(new Ratio(1, 4)), tempo.beatsInMs(250));
      assertEquals(60.0 / bpm, new MeasuredTempo(bpm).secondsOf(1), 1e-12);
      assertEquals(bpm, MeasuredTempo.ofBeat(60.0 / bpm).beatsPerMinute(), 1e-9);
    }
  }

  /** Half a unit is rounded up, before nought too: 1/2000 of a second at 60 is half of a ms. */
  @Test
  void wholeUnitsAreRoundedHalfUp() {
    assertEquals(1, Tempo.of(60).unitsOf(new Ratio(1, 2_000), 1_000));
    assertEquals(0, Tempo.of(60).unitsOf(new Ratio(-1, 2_000), 1_000));
    assertEquals(909_091, Tempo.of(66).unitsOf(Ratio.ONE, 1_000_000));
  }

  /** Seven matras a second are 140 beats of three, or 105 of four. */
  @Test
  void matrasGoByNoQuickerThanARate() {
    assertEquals(Tempo.of(140), Tempo.noQuickerThan(7, 3));
    assertEquals(Tempo.of(105), Tempo.noQuickerThan(7, 4));
    assertEquals(Tempo.of(84), Tempo.noQuickerThan(7.05, 5));
  }

  @Test
  void aFractionalTempoIsExact() {
    assertEquals(new Ratio(8, 5), new Tempo(new Ratio(75, 2)).secondsOf(Ratio.ONE));
  }

  @Test
  void scalingKeepsTheFraction() {
    assertEquals(new Tempo(new Ratio(99, 2)), Tempo.of(66).scaled(new Ratio(3, 4)));
    assertEquals(Tempo.of(120).secondsOf(Ratio.ONE).times(2), Tempo.of(60).secondsOf(Ratio.ONE));
  }

  @Test
  void theLimitsAreTakenAndNothingBeyondThem() {
    assertEquals(Ratio.of(Tempo.SLOWEST), Tempo.of(Tempo.SLOWEST).beatsPerMinute());
    assertEquals(Ratio.of(Tempo.FASTEST), Tempo.of(Tempo.FASTEST).beatsPerMinute());
    assertTrue(Tempo.inRange(Ratio.of(Tempo.SLOWEST)));
    assertFalse(Tempo.inRange(Ratio.of(Tempo.SLOWEST).minus(new Ratio(1, 1_000))));
    assertFalse(Tempo.inRange(Ratio.of(Tempo.FASTEST).plus(new Ratio(1, 1_000))));
    assertFalse(Tempo.inRange(Ratio.ZERO));
    assertFalse(Tempo.inRange(Ratio.of(-60)));
    Tempo fastest = Tempo.of(Tempo.FASTEST);
    Ratio twice = Ratio.of(2);
    assertThrows(IllegalArgumentException.class, () -> fastest.scaled(twice));
  }

  @Test
  void theErrorNamesTheTempoAndTheRange() {
    IllegalArgumentException error =
        assertThrows(IllegalArgumentException.class, () -> Tempo.of(4));
    assertEquals("tempo 4 is outside 5 to 600 beats a minute", error.getMessage());
  }

  @Test
  void aMeasuredTempoIsTheLengthOfItsBeat() {
    MeasuredTempo measured = MeasuredTempo.ofBeat(0.75);
    assertEquals(80, measured.beatsPerMinute(), 1e-12);
    assertEquals(0.75, measured.beatSeconds(), 1e-12);
    assertEquals(1.875, measured.secondsOf(2.5), 1e-12);
  }
}
