package org.matraloom.onset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.madetake.SpokenTake;
import org.matraloom.recording.SoundFiles;

/** A pause is quiet beside what is said, in noise too. */
class QuietTest {

  private static final int RATE = 16_000;
  private static final double FROM = 3.2;
  private static final double TO = 5.2;

  /** So much silence tells that somebody broke off. */
  private static final double PAUSE = 0.4;

  /** Syllables before and after a pause of two seconds. */
  private static final double[] TIMES =
      DoubleStream.concat(
              IntStream.range(0, 12).mapToDouble(k -> 0.8 + 0.2 * k),
              IntStream.range(0, 12).mapToDouble(k -> TO + 0.2 * k))
          .toArray();

  /** How long it is quiet in the pause, with noise so far below the loudest sample. */
  private static double quietSeconds(double noiseDb) throws IOException {
    float[] sound = SpokenTake.syllablesAt(RATE, TIMES, new SplittableRandom(1)).sound();
    double peak = 0;
    for (float sample : sound) {
      peak = Math.max(peak, Math.abs(sample));
    }
    SplittableRandom random = new SplittableRandom(2);
    for (int i = 0; i < sound.length; i++) {
      sound[i] += (float) (peak * Math.pow(10, -noiseDb / 20) * random.nextGaussian());
    }
    SoundLevels levels = OnsetCurve.of(SoundFiles.recording(sound, RATE)).levels();
    return levels
        .longestQuiet(FROM, TO, levels.quietDb(TIMES))
        .map(SoundLevels.Quiet::seconds)
        .orElse(0.0);
  }

  @Test
  void aPauseIsQuietInNoise() throws IOException {
    for (double noiseDb : new double[] {80, 45, 30, 24, 21}) {
      assertTrue(quietSeconds(noiseDb) > PAUSE, noiseDb + " dB: " + quietSeconds(noiseDb));
    }
  }

  @Test
  void whatIsSaidIsNotQuiet() throws IOException {
    float[] sound = SpokenTake.syllablesAt(RATE, TIMES, new SplittableRandom(1)).sound();
    SoundLevels levels = OnsetCurve.of(SoundFiles.recording(sound, RATE)).levels();
    double quiet = levels.quietDb(TIMES);
    assertEquals(
        0, IntStream.range(0, TIMES.length).filter(k -> levels.attackDb(TIMES[k]) < quiet).count());
  }
}
