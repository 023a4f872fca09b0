package org.matraloom.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ResampledRecordingTest {

  private static final int TO = 48_000;

  @ParameterizedTest
  @ValueSource(ints = {8_000, 16_000, 22_050, 32_000, 88_200, 192_000})
  void aToneIsTheSameToneAtAnotherRate(int rate) throws IOException {
    double hz = 1_234.5;
    float[] tone = tone(hz, rate, rate);
    ResampledRecording resampled =
        new ResampledRecording(SoundFiles.recording(tone, rate), tone.length, TO);
    assertEquals(TO, resampled.frames(), 1);
    float[] heard = new float[TO];
    assertEquals(resampled.frames(), resampled.read(heard));
    float[] truth = tone(hz, TO, TO);
    double worst = 0;
    for (int i = TO / 10; i < TO * 9 / 10; i++) {
      worst = Math.max(worst, Math.abs(heard[i] - truth[i]));
    }
    assertTrue(worst < 0.001, "largest difference " + worst);
  }

  @ParameterizedTest
  @ValueSource(ints = {96_000, 192_000})
  void whatTheNewRateCannotHoldIsTakenAway(int rate) throws IOException {
    float[] tone = tone(30_000, rate, rate / 4);
    ResampledRecording resampled =
        new ResampledRecording(SoundFiles.recording(tone, rate), tone.length, TO);
    float[] heard = new float[TO / 4];
    resampled.read(heard);
    double highest = 0;
    for (int i = 1_000; i < heard.length - 1_000; i++) {
      highest = Math.max(highest, Math.abs(heard[i]));
    }
    assertTrue(highest < 0.001, "left over: " + highest);
  }

  private static float[] tone(double hz, int rate, int frames) {
    float[] tone = new float[frames];
    for (int i = 0; i < frames; i++) {
      tone[i] = (float) (0.5 * Math.sin(2 * Math.PI * hz * i / rate));
    }
    return tone;
  }
}
