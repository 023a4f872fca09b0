package org.matraloom.onset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.matraloom.madetake.SpokenTake;
import org.matraloom.recording.SoundFiles;

/** Sounds that begin at known times are found there, at any rate and level, and nothing else is. */
class OnsetCurveTest {

  private static final int[] RATES = {8_000, 11_025, 16_000, 22_050, 44_100, 48_000, 96_000};

  @Test
  void burstsAreFoundWhereTheyBeginAtEveryRate() throws IOException {
    for (int rate : RATES) {
      SpokenTake take = SpokenTake.bursts(rate, 20, 7);
      OnsetMatching matching = match(take, take.sound(), rate);
      assertEquals(new OnsetScore(20, 0, 0), matching.score(), rate + " a second");
      assertEquals(0, matching.medianErrorSeconds(), 0.004, rate + " a second");
      assertTrue(matching.medianAbsoluteErrorSeconds() < 0.004, rate + " a second");
    }
  }

  @Test
  void syllablesCountOnceEach() throws IOException {
    for (int rate : new int[] {8_000, 16_000, 44_100, 48_000}) {
      SpokenTake take = SpokenTake.syllables(rate, 40, 11);
      OnsetMatching matching = match(take, take.sound(), rate);
      OnsetScore score = matching.score();
      assertTrue(score.fMeasure(OnsetScore.Convention.NOUGHT) > 0.95, rate + ": " + score);
      assertTrue(Math.abs(matching.medianErrorSeconds()) < 0.003, rate + " a second");
    }
  }

  @Test
  void theLevelOfTheTakeDoesNotMatter() throws IOException {
    SpokenTake take = SpokenTake.syllables(44_100, 30, 3);
    List<Onset> loud = onsets(take.sound(), 44_100);
    assertTrue(loud.size() > 25, "onsets were found: " + loud.size());
    float[] quiet = take.sound().clone();
    for (int i = 0; i < quiet.length; i++) {
      quiet[i] *= 0.01f;
    }
    List<Onset> soft = onsets(quiet, 44_100);
    assertEquals(loud.size(), soft.size());
    for (int i = 0; i < loud.size(); i++) {
      assertEquals(loud.get(i).seconds(), soft.get(i).seconds(), 0.001);
    }
  }

  @Test
  void silenceNoiseAndHumBeginNothing() throws IOException {
    float[] sound = new float[44_100 * 5];
    assertEquals(List.of(), onsets(new float[0], 44_100));
    assertEquals(List.of(), onsets(sound, 44_100));
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < sound.length; i++) {
      sound[i] = (float) (0.05 * (random.nextDouble() - 0.5));
    }
    assertEquals(List.of(), onsets(sound, 44_100));
    for (int i = 0; i < sound.length; i++) {
      sound[i] = (float) (0.3 * Math.sin(2 * Math.PI * 50 * i / 44_100.0));
    }
    List<Onset> hum = onsets(Arrays.copyOfRange(sound, 22_050, sound.length), 44_100);
    assertTrue(hum.size() <= 1 && hum.stream().allMatch(onset -> onset.seconds() < 0.05));
  }

  @Test
  void aSecondListeningHearsTheSame() throws IOException {
    SpokenTake take = SpokenTake.syllables(16_000, 20, 5);
    assertEquals(onsets(take.sound(), 16_000), onsets(take.sound(), 16_000));
  }

  @Test
  void moreIsFoundWhereLessConfidenceIsAsked() throws IOException {
    SpokenTake take = SpokenTake.syllables(16_000, 30, 9);
    OnsetCurve curve = OnsetCurve.of(SoundFiles.recording(take.sound(), 16_000));
    int usual = curve.onsets(OnsetCurve.USUAL_CONFIDENCE).size();
    assertTrue(curve.onsets(0.05).size() >= usual);
    assertTrue(curve.onsets(0.95).size() <= usual);
    assertEquals(take.sound().length / 16_000.0, curve.lengthSeconds(), 1e-9);
  }

  private static OnsetMatching match(SpokenTake take, float[] sound, int rate) throws IOException {
    double[] found = onsets(sound, rate).stream().mapToDouble(Onset::seconds).toArray();
    return OnsetMatching.within(take.truth(), found, 0.05);
  }

  private static List<Onset> onsets(float[] sound, int rate) throws IOException {
    return OnsetCurve.of(SoundFiles.recording(sound, rate)).onsets(OnsetCurve.USUAL_CONFIDENCE);
  }
}
