package org.matraloom.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pulses come at the pitch, close on the vowel onset, and move no air on the whole. */
class GlottalSourceTest {

  private static final int RATE = 48_000;

  @ParameterizedTest
  @ValueSource(doubles = {98, 132, 140.3, 212})
  void oneClosingFallsOnTheVowelOnset(double pitchHz) {
    int lead = 3_700;
    double[] wave = pulses(lead, 2 * RATE, pitchHz, 0.02);
    int deepest = lead;
    for (int i = lead - 100; i < lead + 100; i++) {
      deepest = wave[i] < wave[deepest] ? i : deepest;
    }
    assertEquals(lead, deepest, 2, "frames");
  }

  @Test
  void closesAtThePitchOnTheWhole() {
    double[] wave = pulses(0, 4 * RATE, 132, 0.02);
    int closings = 0;
    for (int i = 1; i < wave.length - 1; i++) {
      closings += wave[i] < -0.5 && wave[i] <= wave[i - 1] && wave[i] < wave[i + 1] ? 1 : 0;
    }
    assertEquals(4 * 132, closings, 3);
  }

  @Test
  void movesNoAirOnTheWhole() {
    double sum = 0;
    double power = 0;
    for (double slope : pulses(0, RATE, 132, 4)) {
      sum += slope;
      power += slope * slope;
    }
    assertTrue(power / RATE > 0.01, "there is a voice");
    assertEquals(0, sum / RATE, 1e-3);
  }

  @Test
  void moreTiltIsDuller() {
    assertTrue(roughness(pulses(0, RATE, 132, 12)) < 0.7 * roughness(pulses(0, RATE, 132, 2)));
  }

  private static double roughness(double[] wave) {
    double sum = 0;
    for (int i = 1; i < wave.length; i++) {
      sum += (wave[i] - wave[i - 1]) * (wave[i] - wave[i - 1]);
    }
    return sum;
  }

  private static double[] pulses(int lead, int frames, double pitchHz, double tiltDb) {
    double from = (double) -lead / RATE;
    GlottalSource source = new GlottalSource(RATE, new Noise(5), from, pitchHz, 0.6);
    double[] wave = new double[frames];
    source.fill(wave, new double[frames], frames, from, pitchHz, 0.6, tiltDb);
    return wave;
  }
}
