package org.matraloom.loudness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Signals and tolerances of EBU Tech 3341 (2023), table 1: 1 kHz sines, +/-0.1 LU. */
class LoudnessMeterTest {

  private static final int RATE = 48_000;
  private static final double TOLERANCE_LU = 0.1;

  /** A sine burst: how long it lasts and its peak in dBFS on each channel. */
  private record Part(double seconds, double... peakDb) {}

  @ParameterizedTest
  @CsvSource({"1,-23", "2,-33"})
  void casesOneAndTwoReadTheSameOnAllThreeScales(int number, double lufs) {
    LoudnessMeter meter = heard(RATE, new Part(20, lufs, lufs));
    assertEquals(lufs, meter.momentaryLufs(), TOLERANCE_LU, "case " + number);
    assertEquals(lufs, meter.shortTermLufs(), TOLERANCE_LU);
    assertEquals(lufs, meter.integratedLufs(), TOLERANCE_LU);
  }

  @Test
  void caseThreeGatesTheQuietEnds() {
    assertIntegrated(stereo(10, -36), stereo(60, -23), stereo(10, -36));
  }

  @Test
  void caseFourGatesTheSilentEndsToo() {
    assertIntegrated(
        stereo(10, -72), stereo(10, -36), stereo(60, -23), stereo(10, -36), stereo(10, -72));
  }

  @Test
  void caseFiveMeansPowersAndNotDecibels() {
    assertIntegrated(stereo(20, -26), stereo(20.1, -20), stereo(20, -26));
  }

  @Test
  void caseSixWeighsFiveChannels() {
    assertIntegrated(new Part(20, -28, -28, -24, -30, -30));
  }

  @Test
  void caseNineHoldsTheShortTermStill() {
    List<Part> parts = new ArrayList<>();
    for (int time = 0; time < 5; time++) {
      parts.add(stereo(1.34, -20));
      parts.add(stereo(1.66, -30));
    }
    List<Double> readings = readings(parts, 3.0, LoudnessMeter::shortTermLufs);
    assertEquals(121, readings.size());
    readings.forEach(lufs -> assertEquals(-23, lufs, TOLERANCE_LU));
  }

  @Test
  void caseTwelveHoldsTheMomentaryStill() {
    List<Part> parts = new ArrayList<>();
    for (int time = 0; time < 25; time++) {
      parts.add(stereo(0.18, -20));
      parts.add(stereo(0.22, -30));
    }
    List<Double> readings = readings(parts, 1.0, LoudnessMeter::momentaryLufs);
    assertEquals(91, readings.size());
    readings.forEach(lufs -> assertEquals(-23, lufs, TOLERANCE_LU));
  }

  /** BS.1770-4, annex 1: a 997 Hz sine of full scale on one front channel reads -3.01. */
  @Test
  void oneFullScaleChannelReadsMinusThree() {
    float[][] sine = new float[1][5 * RATE];
    for (int frame = 0; frame < sine[0].length; frame++) {
      sine[0][frame] = (float) StrictMath.sin(2 * StrictMath.PI * 997 * frame / RATE);
    }
    LoudnessMeter meter = LoudnessMeter.of(RATE, 1);
    meter.add(sine, 0, sine[0].length);
    assertEquals(-3.01, meter.integratedLufs(), 0.01);
  }

  @ParameterizedTest
  @ValueSource(ints = {8_000, 22_050, 44_100, 88_200, 96_000, 192_000})
  void readsTheSameAtEveryRate(int rate) {
    assertEquals(
        -23, heard(rate, new Part(5, -23, -23)).integratedLufs(), TOLERANCE_LU, "at " + rate);
  }

  @Test
  void blockSizesChangeNothing() {
    float[][] sound = sound(44_100, List.of(stereo(1.3, -20), stereo(2.9, -31)));
    LoudnessMeter whole = LoudnessMeter.of(44_100, 2);
    whole.add(sound, 0, sound[0].length);
    LoudnessMeter pieces = LoudnessMeter.of(44_100, 2);
    int size = 1;
    for (int from = 0; from < sound[0].length; from += size) {
      size = from % 997 + 1;
      pieces.add(sound, from, Math.min(size, sound[0].length - from));
    }
    assertEquals(whole.integratedLufs(), pieces.integratedLufs());
    assertEquals(whole.momentaryLufs(), pieces.momentaryLufs());
    assertEquals(whole.maxShortTermLufs(), pieces.maxShortTermLufs());
    assertTrue(Double.isFinite(whole.maxShortTermLufs()));
  }

  @Test
  void silenceHasNoLoudness() {
    LoudnessMeter meter = LoudnessMeter.of(RATE, 2);
    assertEquals(Double.NEGATIVE_INFINITY, meter.integratedLufs());
    meter.add(new float[2][5 * RATE], 0, 5 * RATE);
    assertEquals(Double.NEGATIVE_INFINITY, meter.integratedLufs());
    assertEquals(Double.NEGATIVE_INFINITY, meter.momentaryLufs());
    assertEquals(Double.NEGATIVE_INFINITY, meter.maxShortTermLufs());
  }

  @Test
  void everyTenDecibelsOfLevelAreTenOfLoudness() {
    double loud = heard(RATE, stereo(5, -13)).integratedLufs();
    assertEquals(loud - 10, heard(RATE, stereo(5, -23)).integratedLufs(), 1e-6);
  }

  @Test
  void refusesWhatItCannotMeasure() {
    assertThrows(IllegalArgumentException.class, () -> LoudnessMeter.of(7_999, 2));
    assertThrows(IllegalArgumentException.class, () -> LoudnessMeter.of(RATE, 3));
    LoudnessMeter meter = LoudnessMeter.of(RATE, 2);
    assertThrows(IllegalArgumentException.class, () -> meter.add(new float[1][1], 0, 1));
  }

  private static Part stereo(double seconds, double peakDb) {
    return new Part(seconds, peakDb, peakDb);
  }

  private static void assertIntegrated(Part... parts) {
    assertEquals(-23, heard(RATE, parts).integratedLufs(), TOLERANCE_LU);
  }

  private static LoudnessMeter heard(int rate, Part... parts) {
    float[][] sound = sound(rate, List.of(parts));
    LoudnessMeter meter = LoudnessMeter.of(rate, sound.length);
    meter.add(sound, 0, sound[0].length);
    return meter;
  }

  private static List<Double> readings(
      List<Part> parts, double fromSeconds, ToDoubleFunction<LoudnessMeter> scale) {
    float[][] sound = sound(RATE, parts);
    LoudnessMeter meter = LoudnessMeter.of(RATE, sound.length);
    List<Double> readings = new ArrayList<>();
    int step = RATE / 10;
    for (int from = 0; from + step <= sound[0].length; from += step) {
      meter.add(sound, from, step);
      if (from + step >= fromSeconds * RATE) {
        readings.add(scale.applyAsDouble(meter));
      }
    }
    return readings;
  }

  private static float[][] sound(int rate, List<Part> parts) {
    int frames = 0;
    for (Part part : parts) {
      frames += (int) Math.round(part.seconds * rate);
    }
    int channels = parts.get(0).peakDb.length;
    float[][] sound = new float[channels][frames];
    int start = 0;
    for (Part part : parts) {
      int length = (int) Math.round(part.seconds * rate);
      for (int channel = 0; channel < channels; channel++) {
        double peak = StrictMath.pow(10, part.peakDb[channel] / 20);
        for (int frame = start; frame < start + length; frame++) {
          sound[channel][frame] =
              (float) (peak * StrictMath.sin(2 * StrictMath.PI * 1000 * frame / rate));
        }
      }
      start += length;
    }
    return sound;
  }
}
