package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.score.Finger;

/** The strokes can be told apart on a small speaker and begin sharply. */
class HandSoundsTest {

  private static final double LOW_HZ = 800;
  private static final double HIGH_HZ = 4000;

  @ParameterizedTest
  @ValueSource(ints = {44_100, 48_000, 96_000})
  void energyLiesWhereAPhoneSpeakerCarriesIt(int rate) {
    strokes(rate)
        .forEach(
            (name, stroke) -> {
              double[] power = power(stroke, rate);
              double share = sum(power, LOW_HZ, HIGH_HZ) / sum(power, 0, 20_000);
              assertTrue(share > 0.75, name + ": share from 800 Hz to 4 kHz is " + share);
              double below = sum(power, 0, 300) / sum(power, 0, 20_000);
              assertTrue(below < 0.01, name + ": share under 300 Hz is " + below);
            });
  }

  @ParameterizedTest
  @ValueSource(ints = {44_100, 48_000, 96_000})
  void eachBeginsOnItsFirstFrameAndWithinAMillisecond(int rate) {
    strokes(rate)
        .forEach(
            (name, stroke) -> {
              assertTrue(Math.abs(stroke[0]) > 0.0005, name + " begins with " + stroke[0]);
              int heard = 0;
              while (Math.abs(stroke[heard]) < 0.1) {
                heard++;
              }
              assertTrue(heard <= rate / 1000, name + " is heard after frame " + heard);
            });
  }

  @ParameterizedTest
  @ValueSource(ints = {44_100, 48_000, 96_000})
  void peaksAreFullAndEndsAreQuiet(int rate) {
    strokes(rate)
        .forEach(
            (name, stroke) -> {
              float peak = 0;
              double sum = 0;
              for (float sample : stroke) {
                peak = Math.max(peak, Math.abs(sample));
                sum += sample;
              }
              assertEquals(1f, peak, name);
              assertEquals(0, sum / stroke.length, 1e-4, name + " is free of DC");
              assertEquals(0, stroke[stroke.length - 1], 1e-6, name + " ends at nought");
              for (int i = stroke.length - rate / 500; i < stroke.length; i++) {
                double bend = stroke[i] - 2 * stroke[i - 1] + stroke[i - 2];
                assertEquals(0, bend, 1e-3, name + " has a click in its tail at " + i);
              }
            });
  }

  @Test
  void partsDifferInLengthAndBrightness() {
    Map<String, float[]> strokes = strokes(48_000);
    double clapMs = lengthMs(strokes.get("clap"), 48_000);
    double waveMs = lengthMs(strokes.get("wave"), 48_000);
    double tickMs = lengthMs(strokes.get("tick"), 48_000);
    double clapHz = centroid(strokes.get("clap"), 48_000);
    double waveHz = centroid(strokes.get("wave"), 48_000);

    assertTrue(lengthMs(strokes.get("samam"), 48_000) > 1.3 * clapMs, "samam is fuller");
    assertTrue(waveHz < 0.7 * clapHz, "the wave is duller: " + waveHz + " against " + clapHz);
    assertTrue(peakMs(strokes.get("wave"), 48_000) > 1.5, "the wave is a brush");
    assertTrue(peakMs(strokes.get("clap"), 48_000) < 1, "the clap is sharp");
    for (Finger finger : Finger.values()) {
      double tapMs = lengthMs(strokes.get(finger.name()), 48_000);
      assertTrue(3 * tapMs < clapMs && 3 * tapMs < waveMs, finger + " is short: " + tapMs);
      assertTrue(1.8 * tickMs < tapMs, finger + " is longer than a tick: " + tickMs);
    }
  }

  @Test
  void everyFingerSoundsALittleLowerThanTheOneBefore() {
    Map<String, float[]> strokes = strokes(48_000);
    Finger[] fingers = Finger.values();
    for (int i = 1; i < fingers.length; i++) {
      double before = centroid(strokes.get(fingers[i - 1].name()), 48_000);
      double here = centroid(strokes.get(fingers[i].name()), 48_000);
      assertTrue(
          here < 0.93 * before && here > 0.6 * before, fingers[i] + ": " + before + " " + here);
    }
  }

  @Test
  void theRateDoesNotChangeTheSound() {
    Map<String, float[]> usual = strokes(48_000);
    Map<String, float[]> dense = strokes(96_000);
    usual.forEach(
        (name, stroke) -> {
          double hz = centroid(stroke, 48_000);
          assertEquals(hz, centroid(dense.get(name), 96_000), 0.03 * hz, name);
          double ms = lengthMs(stroke, 48_000);
          assertEquals(ms, lengthMs(dense.get(name), 96_000), 0.05 * ms + 0.1, name);
        });
  }

  private static Map<String, float[]> strokes(int rate) {
    HandSounds sounds = new HandSounds(rate);
    Map<String, float[]> strokes = new LinkedHashMap<>();
    strokes.put("clap", sounds.clap());
    strokes.put("samam", sounds.samamClap());
    for (Finger finger : Finger.values()) {
      strokes.put(finger.name(), sounds.tap(finger));
    }
    strokes.put("wave", sounds.wave());
    strokes.put("tick", sounds.tick());
    return strokes;
  }

  /** The time in which nine tenths of the energy have been heard. */
  private static double lengthMs(float[] stroke, int rate) {
    double total = 0;
    for (float sample : stroke) {
      total += sample * sample;
    }
    double heard = 0;
    int frame = 0;
    while (heard < 0.9 * total) {
      heard += stroke[frame] * stroke[frame];
      frame++;
    }
    return 1000.0 * frame / rate;
  }

  private static double peakMs(float[] stroke, int rate) {
    int frame = 0;
    while (Math.abs(stroke[frame]) < 1) {
      frame++;
    }
    return 1000.0 * frame / rate;
  }

  private static double centroid(float[] stroke, int rate) {
    double[] power = power(stroke, rate);
    double weighted = 0;
    for (int bin = 0; bin < power.length; bin++) {
      weighted += power[bin] * bin * BIN_HZ;
    }
    return weighted / sum(power, 0, 20_000);
  }

  private static final double BIN_HZ = 50;

  /** Power at multiples of 50 Hz up to 20 kHz, by the definition of the Fourier transform. */
  private static double[] power(float[] stroke, int rate) {
    double[] power = new double[(int) (20_000 / BIN_HZ)];
    for (int bin = 0; bin < power.length; bin++) {
      double real = 0;
      double imaginary = 0;
      for (int i = 0; i < stroke.length; i++) {
        double angle = 2 * Math.PI * bin * BIN_HZ * i / rate;
        real += stroke[i] * Math.cos(angle);
        imaginary += stroke[i] * Math.sin(angle);
      }
      power[bin] = real * real + imaginary * imaginary;
    }
    return power;
  }

  private static double sum(double[] power, double fromHz, double toHz) {
    double sum = 0;
    for (int bin = 0; bin < power.length; bin++) {
      if (bin * BIN_HZ >= fromHz && bin * BIN_HZ <= toHz) {
        sum += power[bin];
      }
    }
    return sum;
  }
}
