package org.matraloom.onset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.matraloom.madetake.SpokenTake;
import org.matraloom.recording.Recording;
import org.matraloom.recording.SoundFiles;

/** Onsets found while the sound goes on, against those of the whole take and against the truth. */
class LiveOnsetsTest {

  private static final int RATE = 48_000;
  private static final double NEAR = LiveOnsetsReport.NEAR_SECONDS;

  private static float[] quieter(float[] sound, double db) {
    float[] quiet = new float[sound.length];
    for (int i = 0; i < sound.length; i++) {
      quiet[i] = (float) (sound[i] * Math.pow(10, -db / 20));
    }
    return quiet;
  }

  @Test
  void nineteenOfTwentyAreWhereTheWholeTakeHasThem() throws IOException {
    int whole = 0;
    int near = 0;
    int extra = 0;
    for (int seed = 1; seed <= 4; seed++) {
      float[] said = SpokenTake.syllables(RATE, 60, seed).sound();
      for (float[] sound : List.of(said, quieter(said, 30))) {
        List<Onset> wanted =
            OnsetCurve.of(SoundFiles.recording(sound, RATE)).heard(OnsetCurve.USUAL_CONFIDENCE);
        List<Onset> live = LiveOnsetsReport.live(SoundFiles.recording(sound, RATE));
        LiveOnsetsReport.Held held = LiveOnsetsReport.held(wanted, live, 1, 0);
        whole += held.whole();
        near += held.near();
        extra += held.extra();
      }
    }
    assertTrue(whole > 400, "onsets of the whole takes: " + whole);
    assertTrue(near >= 0.95 * whole, near + " of " + whole);
    assertTrue(extra <= 0.03 * whole, extra + " more");
  }

  @Test
  void eachIsToldWhileTheSoundIsYoungerThanTheDelaySays() throws IOException {
    SpokenTake take = SpokenTake.bursts(RATE, 40, 5);
    AtomicLong givenFrames = new AtomicLong();
    List<Double> ages = new ArrayList<>();
    LiveOnsets.listen(
        slowly(take.sound(), givenFrames),
        onset -> ages.add((double) givenFrames.get() / RATE - onset.seconds()));
    assertTrue(ages.size() >= 38, "onsets: " + ages.size());
    double oldest = ages.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    assertTrue(oldest < LiveOnsets.DELAY_MS / 1000.0 + 0.020, "oldest " + oldest);
  }

  @Test
  void whatWasHeardIsTheCurveOfTheWholeTakeToTheBit() throws IOException {
    for (int rate : List.of(RATE, 44_100, 16_000)) {
      float[] sound = SpokenTake.syllables(rate, 30, 7).sound();
      BandEnergies wanted = BandEnergies.of(SoundFiles.recording(sound, rate));
      AtomicLong given = new AtomicLong();
      BandEnergies heard =
          LiveOnsets.listen(
              rate == RATE ? slowly(sound, given) : SoundFiles.recording(sound, rate), onset -> {});
      assertEquals(wanted.steps(), heard.steps());
      assertEquals(wanted.lengthFrames(), heard.lengthFrames());
      assertEquals(wanted.peak(), heard.peak());
      for (int step = 0; step < wanted.steps(); step++) {
        for (int band = 0; band < wanted.usedBands(); band++) {
          assertEquals(wanted.energy(step, band), heard.energy(step, band));
        }
      }
      List<Onset> onsets = OnsetCurve.of(heard).onsets(OnsetCurve.USUAL_CONFIDENCE);
      assertEquals(
          OnsetCurve.of(SoundFiles.recording(sound, rate)).onsets(OnsetCurve.USUAL_CONFIDENCE),
          onsets);
      assertTrue(onsets.size() > 20, "onsets: " + onsets.size());
    }
  }

  /** Hands on four milliseconds at a time and counts what was handed on. */
  private static Recording slowly(float[] sound, AtomicLong given) {
    return new Recording() {
      @Override
      public int ratePerSecond() {
        return RATE;
      }

      @Override
      public int read(float[] block) {
        int from = (int) given.get();
        int count = Math.min(RATE / 250, sound.length - from);
        System.arraycopy(sound, from, block, 0, count);
        given.addAndGet(count);
        return count;
      }

      @Override
      public void close() {
        // Nothing is held.
      }
    };
  }

  @Test
  void theFirstSoundAfterDigitalSilenceIsHeardOnceAndInTime() throws IOException {
    SpokenTake take = SpokenTake.bursts(RATE, 3, 9);
    float[] sound = take.sound();
    for (int i = 0; i < (take.truth()[0] - 0.01) * RATE; i++) {
      sound[i] = 0;
    }
    List<Onset> live = LiveOnsetsReport.live(SoundFiles.recording(sound, RATE));
    assertEquals(3, live.size(), live.toString());
    for (int k = 0; k < 3; k++) {
      assertEquals(take.truth()[k], live.get(k).seconds(), NEAR);
    }
  }

  @Test
  void inSilenceAndInNoiseNothingBegins() throws IOException {
    assertEquals(List.of(), LiveOnsetsReport.live(SoundFiles.recording(new float[5 * RATE], RATE)));
    float[] noise = new float[10 * RATE];
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < noise.length; i++) {
      noise[i] = (float) (0.01 * (random.nextDouble() - 0.5));
    }
    List<Onset> live = LiveOnsetsReport.live(SoundFiles.recording(noise, RATE));
    assertTrue(live.size() <= 2, live.toString());
  }
}
