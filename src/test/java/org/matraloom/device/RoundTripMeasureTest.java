package org.matraloom.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Clicks with a known delay are found; what cannot be trusted is refused with its reason. */
class RoundTripMeasureTest {

  private static final int RATE = 48_000;
  private static final int OFFSET = 9_000;

  private final CalibrationClicks clicks = new CalibrationClicks(RATE);
  private final float[] played = clicks.samples();

  private float[] recording(int delay, double gain, double noise) {
    float[] recording = new float[played.length + RATE];
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < recording.length; i++) {
      int from = i - OFFSET - delay;
      double click = from >= 0 && from < played.length ? gain * played[from] : 0;
      recording[i] = (float) (click + noise * (random.nextDouble() * 2 - 1));
    }
    return recording;
  }

  private RoundTripMeasure.Finding find(float[] recording) {
    return RoundTripMeasure.find(clicks, recording, OFFSET, RATE);
  }

  @ParameterizedTest
  @ValueSource(ints = {-480, 0, 1, 333, 4_800, 23_000})
  void aKnownDelayIsFoundToTheFrame(int delay) {
    RoundTripMeasure.Finding found = find(recording(delay, 0.3, 0));
    assertEquals("", found.trouble());
    assertEquals(CalibrationClicks.COUNT, found.delays().size());
    assertEquals(delay, found.median());
    assertEquals(0, found.spread());
  }

  @Test
  void aQuietClickInNoiseIsStillFound() {
    RoundTripMeasure.Finding found = find(recording(700, 0.1, 0.01));
    assertEquals("", found.trouble());
    assertEquals(700, found.median(), 1);
    assertTrue(found.spread() <= 2, "spread " + found.spread());
  }

  @Test
  void silenceIsRefused() {
    assertTrue(find(recording(0, 0, 0)).trouble().startsWith("nothing was heard"));
    assertTrue(find(recording(0, 0, 1e-4)).trouble().startsWith("nothing was heard"));
  }

  @Test
  void noiseAloneIsRefused() {
    String trouble = find(recording(0, 0, 0.3)).trouble();
    assertTrue(trouble.matches("only \\d+ of 20 clicks were heard clearly.*"), trouble);
  }

  @Test
  void aDelayLongerThanCanBeToldIsRefused() {
    assertTrue(!find(recording(40_000, 0.3, 0)).trouble().isEmpty());
  }

  @Test
  void aDelayThatChangesIsRefused() {
    float[] steady = recording(480, 0.3, 0);
    float[] jumps = steady.clone();
    int middle = (int) clicks.frame(10) - RATE / 10;
    System.arraycopy(steady, middle, jumps, middle + 480, steady.length - middle - 480);
    String trouble = find(jumps).trouble();
    assertTrue(trouble.startsWith("the delay changed by 10.0 ms"), trouble);
  }

  @Test
  void clicksAreFarEnoughApartForTheLongestDelay() {
    for (int i = 1; i < CalibrationClicks.COUNT; i++) {
      long gapMs = (clicks.frame(i) - clicks.frame(i - 1)) * 1000 / RATE;
      assertTrue(gapMs >= CalibrationClicks.LONGEST_DELAY_MS + 50, "gap " + gapMs);
    }
  }
}
