package org.matraloom.loudness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TruePeakTest {

  private static final int FRAMES = 48_000;

  /** EBU Tech 3341 (2023), table 1, cases 15 to 19, tolerance +0.2/-0.4 dB. */
  @ParameterizedTest
  @CsvSource({
    "15,4,0.50,0,-6.0",
    "16,4,0.50,45,-6.0",
    "17,6,0.50,60,-6.0",
    "18,8,0.50,67.5,-6.0",
    "19,4,1.41,45,3.0"
  })
  void findsThePeakBetweenTheSamples(
      int number, int periodFrames, double peak, double degrees, double expectedDbtp) {
    double error = measured(sine(periodFrames, peak, degrees)) - expectedDbtp;
    assertTrue(error <= 0.2 && error >= -0.4, "case " + number + " is off by " + error);
  }

  @Test
  void neverReadsBelowASample() {
    float[] click = new float[100];
    click[40] = -0.8f;
    assertEquals(20 * StrictMath.log10(0.8), measured(click), 1e-6);
  }

  @Test
  void silenceHasNoPeak() {
    assertEquals(Double.NEGATIVE_INFINITY, measured(new float[100]));
  }

  @Test
  void takesTheLouderChannelAndAnyBlocks() {
    float[][] sound = {sine(4, 0.2, 45), sine(4, 0.5, 45)};
    TruePeak pieces = new TruePeak(2);
    for (int from = 0; from < FRAMES; from += 7) {
      pieces.add(sound, from, Math.min(7, FRAMES - from));
    }
    assertEquals(measured(sound[1]), pieces.dbtp());
  }

  @Test
  void refusesAnotherNumberOfChannels() {
    assertThrows(IllegalArgumentException.class, () -> new TruePeak(0));
    assertThrows(IllegalArgumentException.class, () -> new TruePeak(2).add(new float[1][1], 0, 1));
  }

  private static double measured(float[] samples) {
    TruePeak meter = new TruePeak(1);
    meter.add(new float[][] {samples}, 0, samples.length);
    return meter.dbtp();
  }

  /** A sine with a slow start and end, so that only its steady part is read. */
  private static float[] sine(int periodFrames, double peak, double degrees) {
    float[] samples = new float[FRAMES];
    int ramp = FRAMES / 4;
    for (int frame = 0; frame < FRAMES; frame++) {
      double gain = Math.min(1, Math.min(frame, FRAMES - frame) / (double) ramp);
      double phase = 2 * StrictMath.PI * frame / periodFrames + StrictMath.toRadians(degrees);
      samples[frame] = (float) (gain * peak * StrictMath.sin(phase));
    }
    return samples;
  }
}
