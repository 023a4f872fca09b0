package org.matraloom.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Positions become frames once, rounded half up, at every tempo and rate that is offered. */
class FrameClockTest {

  private static final int STEPS = 20_000;

  static List<FrameClock> clocks() {
    List<FrameClock> clocks = new ArrayList<>();
    for (int rate : new int[] {44_100, 48_000, 96_000}) {
      for (Ratio tempo : List.of(new Ratio(75, 2), of(60), of(66), of(71), of(200))) {
        clocks.add(new FrameClock(new Tempo(tempo), rate, Ratio.ZERO));
      }
    }
    return clocks;
  }

  /** Frames by another route: {@link BigDecimal} division, whose rounding is by magnitude. */
  private static long expected(FrameClock clock, Ratio beat) {
    Ratio tempo = clock.tempo().beatsPerMinute();
    BigDecimal num =
        BigDecimal.valueOf(beat.num())
            .multiply(BigDecimal.valueOf(60L * clock.ratePerSecond()))
            .multiply(BigDecimal.valueOf(tempo.den()));
    BigDecimal den = BigDecimal.valueOf(beat.den()).multiply(BigDecimal.valueOf(tempo.num()));
    RoundingMode halfUp = num.signum() < 0 ? RoundingMode.HALF_DOWN : RoundingMode.HALF_UP;
    return num.divide(den, 0, halfUp).longValueExact();
  }

  @ParameterizedTest
  @MethodSource("clocks")
  void agreesWithDecimalDivision(FrameClock clock) {
    SplittableRandom random = new SplittableRandom(7);
    for (int round = 0; round < 2_000; round++) {
      Ratio beat = new Ratio(random.nextLong(-400_000, 4_000_000), random.nextLong(1, 5_041));
      assertEquals(expected(clock, beat), clock.frameAt(beat), beat + " at " + clock);
    }
  }

  /** At 60 beats a minute and 48 000 frames a second, 1/96 000 of a beat is half a frame. */
  @ParameterizedTest
  @CsvSource({
    "1, 1",
    "-1, 0",
    "3, 2",
    "-3, -1",
    "5, 3",
    "-5, -2",
    "2, 1",
    "-2, -1",
    "0, 0",
    "95999, 48000"
  })
  void aHalfFrameGoesUpOnBothSidesOfTheOrigin(long halfFrames, long frame) {
    FrameClock clock = new FrameClock(Tempo.of(60), 48_000, Ratio.ZERO);
    assertEquals(frame, clock.frameAt(new Ratio(halfFrames, 96_000)));
    assertEquals(frame, clock.framesIn(new Ratio(halfFrames, 96_000)));
  }

  @ParameterizedTest
  @MethodSource("clocks")
  void aBeatGoesOnFromItsFrameToTheFrameBeforeTheNext(FrameClock clock) {
    for (long beats : new long[] {-3, 0, 1, 7, 12_345}) {
      long from = clock.framesIn(of(beats));
      assertEquals(beats, clock.beatsBefore(from));
      assertEquals(beats - 1, clock.beatsBefore(from - 1));
      assertEquals(beats, clock.beatsBefore(clock.framesIn(of(beats + 1)) - 1));
    }
  }

  @ParameterizedTest
  @MethodSource("clocks")
  void nothingDriftsOverTwentyThousandSteps(FrameClock clock) {
    int seen = 0;
    for (int nadai : new int[] {3, 4, 5, 7, 9}) {
      Ratio matra = new Ratio(1, nadai);
      double exactStep =
          clock.tempo().secondsOf(Ratio.ONE).toDouble() * clock.ratePerSecond() / nadai;
      long before = 0;
      for (int step = 1; step <= STEPS; step++) {
        long frame = clock.frameAt(matra.times(step));
        assertTrue(Math.abs(frame - step * exactStep) <= 0.5 + 1e-5);
        assertTrue(Math.abs(frame - before - exactStep) <= 1.0 + 1e-5);
        before = frame;
        seen++;
      }
      assertEquals(
          clock.frameAt(of(STEPS / nadai)), clock.frameAt(matra.times(STEPS / nadai * nadai)));
    }
    assertEquals(5 * STEPS, seen);
  }

  /** What the clock avoids: the same steps, each a whole number of frames, added up. */
  @Test
  void addingWholeFramesWouldDrift() {
    long worst = 0;
    for (FrameClock clock : clocks()) {
      long added = clock.framesIn(new Ratio(1, 7)) * STEPS;
      worst = Math.max(worst, Math.abs(added - clock.frameAt(new Ratio(STEPS, 7))));
    }
    assertTrue(worst > 1_000, "worst drift of added steps: " + worst + " frames");
  }

  /** Every matra of a nadai that falls on a beat falls on that beat's frame, whatever the nadai. */
  @ParameterizedTest
  @MethodSource("clocks")
  void aBeatHasOneFrameInEveryNadai(FrameClock clock) {
    for (int beat = -64; beat < 512; beat++) {
      long frame = expected(clock, of(beat));
      for (int matrasPerBeat : new int[] {3, 4, 5, 7, 9, 12, 16, 20, 28, 36}) {
        Ratio byMatras = new Ratio(1, matrasPerBeat).times((long) beat * matrasPerBeat);
        assertEquals(frame, clock.frameAt(byMatras));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("clocks")
  void doubleTempoHalvesEveryTime(FrameClock clock) {
    Ratio twice = of(2);
    FrameClock fast =
        new FrameClock(clock.tempo().scaled(twice), clock.ratePerSecond(), Ratio.ZERO);
    for (int matra = -500; matra < 5_000; matra++) {
      Ratio beat = new Ratio(matra, 5);
      assertEquals(clock.frameAt(beat.dividedBy(2)), fast.frameAt(beat));
      assertEquals(clock.secondsAt(beat) / 2, fast.secondsAt(beat));
      assertEquals(fast.frameAt(beat.times(2)), clock.frameAt(beat));
    }
  }

  @ParameterizedTest
  @MethodSource("clocks")
  void theOriginIsFrameNought(FrameClock clock) {
    for (Ratio origin : List.of(of(-8), new Ratio(-1, 4), new Ratio(7, 5), of(1_000_000))) {
      FrameClock shifted = new FrameClock(clock.tempo(), clock.ratePerSecond(), origin);
      assertEquals(0, shifted.frameAt(origin));
      assertEquals(0.0, shifted.secondsAt(origin));
      assertEquals(clock.frameAt(of(3)), shifted.frameAt(origin.plus(of(3))));
      assertTrue(shifted.frameAt(origin.minus(Ratio.ONE)) < 0);
    }
  }

  /** Arithmetic: a matra in milliseconds is 60 000 / (beats a minute x gati x density). */
  @ParameterizedTest
  @CsvSource({
    "60, 4, 250",
    "60, 5, 200",
    "80, 4, 187.5",
    "80, 5, 150",
    "40, 4, 375",
    "40, 5, 300",
    "100, 4, 150",
    "100, 5, 120",
    "60, 16, 62.5"
  })
  void matraLengthsInMilliseconds(int beatsPerMinute, int matrasPerBeat, double ms) {
    FrameClock clock = new FrameClock(Tempo.of(beatsPerMinute), 48_000, Ratio.ZERO);
    Ratio matra = new Ratio(1, matrasPerBeat);
    assertEquals(ms / 1_000, clock.secondsAt(matra), 1e-12);
    assertEquals(Math.round(ms * 48), clock.frameAt(matra));
  }

  /** A beat goes on from its own frame to the frame before the next one's. */
  @ParameterizedTest
  @CsvSource({"60, 48000", "71, 44100", "97, 22050", "66, 96000", "213, 8000"})
  void theBeatThatGoesOnAtAFrame(int beatsPerMinute, int rate) {
    FrameClock clock = new FrameClock(Tempo.of(beatsPerMinute), rate, Ratio.ZERO);
    for (long beat = -300; beat <= 300; beat++) {
      long begins = clock.framesIn(of(beat));
      assertEquals(beat, clock.beatsBefore(begins), "at its frame");
      assertEquals(beat - 1, clock.beatsBefore(begins - 1), "before it");
      assertEquals(beat, clock.beatsBefore(clock.framesIn(of(beat + 1)) - 1), "to the next one");
    }
  }

  @Test
  void framesLastTheirShareOfASecond() {
    assertEquals(2.5, FrameClock.seconds(120_000, 48_000));
    assertEquals(-0.5, FrameClock.seconds(-22_050, 44_100));
  }

  @Test
  void aFrameThatDoesNotFitThrows() {
    FrameClock clock = new FrameClock(Tempo.of(60), 48_000, Ratio.ZERO);
    Ratio far = of(Long.MAX_VALUE / 2);
    assertThrows(ArithmeticException.class, () -> clock.frameAt(far));
    assertThrows(ArithmeticException.class, () -> clock.framesIn(far));
  }

  @Test
  void aRateOutsideTheRangeIsRefused() {
    Tempo tempo = Tempo.of(60);
    assertThrows(IllegalArgumentException.class, () -> new FrameClock(tempo, 7_999, Ratio.ZERO));
    assertThrows(IllegalArgumentException.class, () -> new FrameClock(tempo, 192_001, Ratio.ZERO));
    assertEquals(8_000, new FrameClock(tempo, 8_000, Ratio.ZERO).frameAt(Ratio.ONE));
    assertEquals(192_000, new FrameClock(tempo, 192_000, Ratio.ZERO).frameAt(Ratio.ONE));
  }

  private static Ratio of(long whole) {
    return Ratio.of(whole);
  }
}
