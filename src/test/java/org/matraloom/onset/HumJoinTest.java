package org.matraloom.onset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.matraloom.recording.SoundFiles;

class HumJoinTest {

  private static final int RATE = 16_000;
  private static final double HUM_SECONDS = 0.5;
  private static final double RELEASE_SECONDS = 0.6;

  @Test
  void theHumOfAVoicedStopBeginsNothingButItsReleaseDoes() throws IOException {
    float[] sound = new float[RATE];
    ring(sound, HUM_SECONDS, RELEASE_SECONDS, 300, 0.05, 1e9);
    strike(sound, RELEASE_SECONDS);
    assertEquals(List.of(RELEASE_SECONDS), joined(sound));
  }

  @Test
  void aStrokeThatRingsIntoTheNextStays() throws IOException {
    float[] sound = new float[RATE];
    ring(sound, HUM_SECONDS, 1, 300, 0.4, 0.06);
    strike(sound, HUM_SECONDS);
    strike(sound, RELEASE_SECONDS);
    assertEquals(List.of(HUM_SECONDS, RELEASE_SECONDS), joined(sound));
  }

  @Test
  void aLowStrokeWithoutABurstDiesAwayAndStays() throws IOException {
    float[] sound = new float[RATE];
    ring(sound, HUM_SECONDS, RELEASE_SECONDS, 300, 0.1, 0.04);
    strike(sound, RELEASE_SECONDS);
    assertEquals(List.of(HUM_SECONDS, RELEASE_SECONDS), joined(sound));
  }

  @Test
  void aVowelAsLoudAsWhatFollowsStays() throws IOException {
    float[] sound = new float[RATE];
    ring(sound, HUM_SECONDS, RELEASE_SECONDS, 300, 0.4, 1e9);
    strike(sound, RELEASE_SECONDS);
    assertEquals(List.of(HUM_SECONDS, RELEASE_SECONDS), joined(sound));
  }

  @Test
  void theOddsOfBothAreThoseOfTheRelease() throws IOException {
    float[] sound = new float[RATE];
    ring(sound, HUM_SECONDS, RELEASE_SECONDS, 300, 0.05, 1e9);
    strike(sound, RELEASE_SECONDS);
    BandEnergies energies = BandEnergies.of(SoundFiles.recording(sound, RATE));
    List<OnsetPeaks.Peak> joined =
        new HumJoin(energies)
            .joined(
                List.of(peak(energies, HUM_SECONDS, 0.15), peak(energies, RELEASE_SECONDS, 0.5)));
    assertEquals(1, joined.size());
    assertEquals(0.65, joined.get(0).confidence(), 1e-9);
  }

  private static List<Double> joined(float[] sound) throws IOException {
    BandEnergies energies = BandEnergies.of(SoundFiles.recording(sound, RATE));
    List<OnsetPeaks.Peak> peaks =
        List.of(peak(energies, HUM_SECONDS, 0.8), peak(energies, RELEASE_SECONDS, 0.8));
    return new HumJoin(energies)
        .joined(peaks).stream()
            .map(peak -> Math.rint(energies.secondsAt(peak.step()) * 100) / 100)
            .toList();
  }

  private static OnsetPeaks.Peak peak(BandEnergies energies, double seconds, double confidence) {
    int step = energies.stepAt(seconds);
    return new OnsetPeaks.Peak(step, step, confidence);
  }

  /** A low tone from one moment to another that falls by 8.7 dB in so many seconds. */
  private static void ring(
      float[] sound, double from, double to, double hertz, double loud, double fallSeconds) {
    IntStream.range((int) (from * RATE), (int) (to * RATE))
        .forEach(
            i -> {
              double since = (double) i / RATE - from;
              double swell = Math.min(1, since / 0.008);
              sound[i] +=
                  (float)
                      (loud
                          * swell
                          * Math.exp(-since / fallSeconds)
                          * Math.sin(2 * Math.PI * hertz * since));
            });
  }

  /** A burst of noise and a bright tone after it. */
  private static void strike(float[] sound, double from) {
    SplittableRandom random = new SplittableRandom(3);
    int first = (int) (from * RATE);
    for (int i = 0; i < RATE / 5; i++) {
      double since = (double) i / RATE;
      sound[first + i] +=
          (float)
              (0.3 * Math.exp(-since / 0.01) * (2 * random.nextDouble() - 1)
                  + 0.3 * Math.exp(-since / 0.1) * Math.sin(2 * Math.PI * 500 * since)
                  + 0.2 * Math.exp(-since / 0.1) * Math.sin(2 * Math.PI * 1500 * since));
    }
  }
}
