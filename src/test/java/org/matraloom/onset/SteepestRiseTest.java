package org.matraloom.onset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.matraloom.recording.SoundFiles;

/** Rises of known size at known moments: every window of the sound has the same pulses in it. */
class SteepestRiseTest {

  private static final int RATE = 16_000;

  /** One pulse for each step of the analysis, so that all that changes is the level. */
  private static final int PULSE_FRAMES = RATE / BandEnergies.STEPS_PER_SECOND;

  private static final double STEP_SECONDS = 1.0 / BandEnergies.STEPS_PER_SECOND;

  /** Sound of some levels in decibels, each for half a second. */
  private static SoundLevels levels(double... db) throws IOException {
    float[] sound = new float[db.length * RATE / 2];
    for (int i = 0; i < sound.length; i += PULSE_FRAMES) {
      sound[i] = (float) (0.9 * Math.pow(10, db[i * 2 / RATE] / 20));
    }
    return OnsetCurve.of(SoundFiles.recording(sound, RATE)).levels();
  }

  @Test
  void aRiseIsFoundAtItsMomentAndHasItsSize() throws IOException {
    for (double size : new double[] {3, 6, 12, 24}) {
      SoundLevels.Rise rise = levels(-30, -30, size - 30, size - 30).steepestRise(0.2, 1.8);
      assertEquals(1, rise.seconds(), 2 * STEP_SECONDS, size + " dB");
      assertEquals(size, rise.db(), 0.05);
    }
  }

  @Test
  void onlyWhatIsBetweenTheMomentsCounts() throws IOException {
    SoundLevels levels = levels(-40, -30, -24, -4);
    for (double[] range : new double[][] {{0.7, 1.3}, {0.55, 1.45}, {0.9, 1.1}}) {
      SoundLevels.Rise rise = levels.steepestRise(range[0], range[1]);
      assertEquals(1, rise.seconds(), 2 * STEP_SECONDS);
      assertEquals(6, rise.db(), 0.05);
    }
    assertEquals(1.5, levels.steepestRise(0.2, 1.8).seconds(), 2 * STEP_SECONDS);
    assertEquals(20, levels.steepestRise(0.2, 1.8).db(), 0.05);
    SoundLevels.Rise none = levels.steepestRise(0.7, 0.8);
    assertEquals(0, none.db(), 0.05, "nothing grows there");
    assertTrue(none.seconds() > 0.69 && none.seconds() < 0.81, "" + none);
  }

  @Test
  void ofEqualRisesTheFirstCounts() throws IOException {
    SoundLevels.Rise rise = levels(-30, -20, -20, -30, -20, -20).steepestRise(0.2, 2.8);
    assertEquals(0.5, rise.seconds(), 2 * STEP_SECONDS);
    assertEquals(10, rise.db(), 0.05);
  }

  @Test
  void whatFallsIsLevel() throws IOException {
    assertEquals(0, levels(-10, -30, -50).steepestRise(0.1, 1.4).db(), 0.05);
  }

  /** A high tone that ends right before a low one begins, or goes on: the low one rises as much. */
  @Test
  void whatFallsTakesNothingFromWhatRises() throws IOException {
    double[] rises = new double[2];
    for (int ends = 0; ends < 2; ends++) {
      float[] sound = new float[2 * RATE];
      for (int i = 0; i < sound.length; i++) {
        boolean high = ends == 0 || i < 0.994 * RATE;
        double low = i < RATE ? 0.001 : 0.3;
        sound[i] = (float) (low * Math.sin(2 * Math.PI * 500 * i / RATE));
        sound[i] += (float) (high ? 0.3 * Math.sin(2 * Math.PI * 4_000 * i / RATE) : 0);
      }
      SoundLevels.Rise rise =
          OnsetCurve.of(SoundFiles.recording(sound, RATE)).levels().steepestRise(0.5, 1.5);
      assertEquals(1, rise.seconds(), 3 * STEP_SECONDS);
      rises[ends] = rise.db();
    }
    assertTrue(rises[0] > 3, "rises by " + rises[0]);
    assertTrue(rises[1] > 0.8 * rises[0], rises[1] + " and " + rises[0]);
  }

  /** Moments outside count as the beginning and the end; where a recording begins nothing grows. */
  @Test
  void momentsOutsideTheRecordingAreItsEnds() throws IOException {
    SoundLevels levels = levels(-30, -30, -20);
    SoundLevels.Rise whole = levels.steepestRise(-5, 60);
    assertEquals(1, whole.seconds(), 2 * STEP_SECONDS);
    assertEquals(10, whole.db(), 0.05);
    for (double[] range : new double[][] {{-9, -8}, {50, 60}, {-1, 0.5}}) {
      SoundLevels.Rise rise = levels.steepestRise(range[0], range[1]);
      assertEquals(0, rise.db(), 0.05, Arrays.toString(range));
    }
  }
}
