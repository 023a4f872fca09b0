package org.matraloom.retell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.madetake.SpokenTake;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.SoundFiles;

/** What slowing may change, and what not: length, pitch, level, and where sounds begin. */
class SlowSoundTest {

  private static final int RATE = 48_000;
  private static final double CENT = Math.pow(2, 1.0 / 1200);

  /** A voice-like tone of 20 harmonics, its pitch found again by autocorrelation. */
  @ParameterizedTest
  @ValueSource(doubles = {0.25, 0.4, 0.6, 0.75, 0.9, 1})
  void pitchAndLevelStayAndTheLengthIsRight(double speed) throws IOException {
    for (double hz : new double[] {82, 147.3, 246}) {
      float[] tone = tone(hz, 1.5);
      float[] slow = slowed(tone, speed, List.of());
      assertEquals(Math.round(tone.length / speed), slow.length);
      float[] before = Arrays.copyOfRange(tone, 9_600, tone.length - 9_600);
      float[] after = Arrays.copyOfRange(slow, 9_600, slow.length - (int) (9_600 / speed));
      double cents = Math.log(pitch(after) / pitch(before)) / Math.log(CENT);
      assertEquals(0, cents, 2, hz + " Hz at " + speed);
      assertEquals(0, 20 * Math.log10(rms(after) / rms(before)), 0.2, "level in dB");
    }
  }

  /** A join that does not fit would show as a bend the tone itself does not have. */
  @Test
  void joinsDoNotClick() throws IOException {
    float[] tone = new float[2 * RATE];
    for (int i = 0; i < tone.length; i++) {
      tone[i] = (float) (0.5 * Math.sin(2 * Math.PI * 220.5 * i / RATE));
    }
    float[] slow = slowed(tone, 0.6, List.of());
    float[] heard = Arrays.copyOfRange(slow, 4_800, slow.length - 9_600);
    assertTrue(sharpestBend(heard) < 1.05 * sharpestBend(tone), "bend " + sharpestBend(heard));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.4, 0.6, 0.75})
  void everyBeatIsHeardWhereItBelongs(double speed) throws IOException {
    SpokenTake take = SpokenTake.syllables(RATE, 40, 77);
    List<SlowMap.AnchorPoint> anchors = new ArrayList<>();
    for (double onset : take.truth()) {
      anchors.add(new SlowMap.AnchorPoint(onset, onset + 0.02));
    }
    float[] slow = slowed(take.sound(), speed, anchors);
    List<Onset> before = onsets(take.sound());
    List<Onset> after = onsets(slow);
    List<Double> errors = new ArrayList<>();
    for (double onset : take.truth()) {
      double heard = nearest(before, onset);
      if (Math.abs(heard - onset) < 0.01) {
        double wanted = (onset + 0.02) / speed - 0.02 + heard - onset;
        errors.add(Math.abs(nearest(after, wanted) - wanted));
      }
    }
    assertTrue(errors.size() >= 38, "onsets were found before: " + errors.size());
    errors.sort(null);
    // The detector itself, which looks every 4 ms, wavers by about 1 ms.
    assertTrue(errors.get(errors.size() / 2) < 0.0015, "median " + errors.get(errors.size() / 2));
    assertTrue(errors.get(errors.size() * 9 / 10) < 0.003, errors.toString());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.25, 0.4, 0.6, 0.75})
  void aStrokeIsHeardOnceAndNotTwice(double speed) throws IOException {
    SpokenTake take = SpokenTake.bursts(RATE, 40, 78);
    List<SlowMap.AnchorPoint> anchors = new ArrayList<>();
    for (double onset : take.truth()) {
      anchors.add(new SlowMap.AnchorPoint(onset, onset));
    }
    List<Onset> after = onsets(slowed(take.sound(), speed, anchors));
    List<Onset> before = onsets(take.sound());
    assertEquals(before.size(), after.size());
    for (double onset : take.truth()) {
      double wanted = onset / speed + nearest(before, onset) - onset;
      assertEquals(wanted, nearest(after, wanted), 0.003);
    }
  }

  @Test
  void aKeptSoundIsCopiedSampleForSample() throws IOException {
    SplittableRandom random = new SplittableRandom(5);
    float[] sound = new float[RATE];
    for (int i = RATE / 2; i < RATE / 2 + 960; i++) {
      sound[i] = (float) random.nextDouble(-0.5, 0.5);
    }
    float[] slow = slowed(sound, 0.5, List.of(new SlowMap.AnchorPoint(0.5, 0.5)));
    assertEquals(2 * RATE, slow.length);
    for (int i = 0; i < 960; i++) {
      assertEquals(sound[RATE / 2 + i], slow[RATE + i], 1e-6, "sample " + i);
    }
  }

  @Test
  void silenceStaysSilent() throws IOException {
    for (float sample : slowed(new float[RATE], 0.6, List.of())) {
      assertEquals(0, sample);
    }
  }

  @Test
  void theSizeOfTheBlocksChangesNothing() throws IOException {
    float[] tone = tone(147, 0.5);
    SlowSound small = slow(tone, 0.6, List.of());
    float[] large = slowed(tone, 0.6, List.of());
    float[] block = new float[7];
    int at = 0;
    int count;
    while ((count = small.read(block)) > 0) {
      for (int i = 0; i < count; i++) {
        assertEquals(large[at++], block[i]);
      }
    }
    assertEquals(large.length, at);
  }

  private static double nearest(List<Onset> onsets, double seconds) {
    return onsets.stream()
        .mapToDouble(Onset::seconds)
        .reduce((a, b) -> Math.abs(a - seconds) <= Math.abs(b - seconds) ? a : b)
        .orElse(-1);
  }

  private static List<Onset> onsets(float[] sound) throws IOException {
    return OnsetCurve.of(SoundFiles.recording(sound, RATE)).onsets(OnsetCurve.USUAL_CONFIDENCE);
  }

  private static float[] slowed(float[] sound, double speed, List<SlowMap.AnchorPoint> anchors)
      throws IOException {
    SlowSound slow = slow(sound, speed, anchors);
    float[] all = new float[(int) Math.round(sound.length / speed) + 1];
    int count = slow.read(all);
    return Arrays.copyOf(all, count);
  }

  private static SlowSound slow(float[] sound, double speed, List<SlowMap.AnchorPoint> anchors) {
    return new SlowSound(
        SoundFiles.recording(sound, RATE),
        new SlowMap(speed, anchors),
        Math.round(sound.length / speed));
  }

  private static float[] tone(double hz, double seconds) {
    float[] tone = new float[(int) (seconds * RATE)];
    for (int i = 0; i < tone.length; i++) {
      for (int harmonic = 1; harmonic <= 20; harmonic++) {
        double phase = 2 * Math.PI * hz * harmonic * i / RATE + harmonic * harmonic;
        tone[i] += (float) (0.1 / harmonic * Math.sin(phase));
      }
    }
    return tone;
  }

  /** The mean pitch of half-second stretches, by the autocorrelation's peak between samples. */
  private static double pitch(float[] sound) {
    double sum = 0;
    int stretches = 0;
    for (int from = 0; from + 12_000 <= sound.length; from += 12_000) {
      sum += pitch(sound, from);
      stretches++;
    }
    return sum / stretches;
  }

  private static double pitch(float[] sound, int from) {
    double best = 0;
    int period = 0;
    for (int lag = RATE / 300; lag < RATE / 70; lag++) {
      double match = match(sound, from, lag);
      if (match > best * 1.001) {
        best = match;
        period = lag;
      }
    }
    double left = match(sound, from, period - 1);
    double right = match(sound, from, period + 1);
    return RATE / (period + 0.5 * (left - right) / (left - 2 * best + right));
  }

  private static double match(float[] sound, int from, int lag) {
    double sum = 0;
    for (int i = from; i < from + 10_000; i++) {
      sum += sound[i] * sound[i + lag];
    }
    return sum;
  }

  private static double rms(float[] sound) {
    double sum = 0;
    for (float sample : sound) {
      sum += sample * sample;
    }
    return Math.sqrt(sum / sound.length);
  }

  private static double sharpestBend(float[] sound) {
    double sharpest = 0;
    for (int i = 1; i + 1 < sound.length; i++) {
      sharpest = Math.max(sharpest, Math.abs(sound[i - 1] - 2 * sound[i] + sound[i + 1]));
    }
    return sharpest;
  }
}
