package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.matraloom.voice.Noise;

/** The limiter holds the ceiling and touches nothing under it. */
class LimiterTest {

  private static final int RATE = 48_000;
  private static final double CEILING = Mix.linear(Limiter.CEILING_DBFS);

  @Test
  void whatIsUnderTheCeilingPassesToTheBit() {
    float[] in = noise(0.84, 20_000);
    float[] left = in.clone();
    float[] right = noise(0.1, 20_000);
    Limiter limiter = new Limiter(RATE);
    limiter.process(left, right, left.length);

    int delay = limiter.delayFrames();
    assertTrue(delay > 0 && delay < 500, "delay " + delay);
    assertArrayEquals(
        Arrays.copyOf(in, in.length - delay), Arrays.copyOfRange(left, delay, left.length));
  }

  @Test
  void noPeakPassesTheCeiling() {
    float[] in = noise(3, 50_000);
    in[10_000] = 40;
    in[30_000] = -40;
    float[] left = in.clone();
    float[] right = noise(1, 50_000);
    new Limiter(RATE).process(left, right, left.length);

    double highest = 0;
    for (int i = 0; i < left.length; i++) {
      highest = Math.max(highest, Math.max(Math.abs(left[i]), Math.abs(right[i])));
    }
    assertTrue(highest <= CEILING * (1 + 1e-6), "highest " + highest);
    assertTrue(highest > 0.9 * CEILING, "it does not hold more than it must: " + highest);
  }

  @Test
  void aPeakStaysWhereItWas() {
    float[] left = new float[4_000];
    left[2_000] = 4;
    Limiter limiter = new Limiter(RATE);
    limiter.process(left, new float[4_000], 4_000);

    assertEquals(CEILING, left[2_000 + limiter.delayFrames()], 1e-6);
  }

  @Test
  void theGainIsDownBeforeThePeakAndRecoversToExactlyOne() {
    float[] steady = new float[RATE];
    Arrays.fill(steady, 0.25f);
    steady[10_000] = 2;
    float[] left = steady.clone();
    Limiter limiter = new Limiter(RATE);
    limiter.process(left, new float[RATE], RATE);

    int peak = 10_000 + limiter.delayFrames();
    double steepest = 0;
    for (int i = 1_000; i < RATE; i++) {
      if (i != peak && i != peak + 1) {
        steepest = Math.max(steepest, Math.abs(left[i] - left[i - 1]));
      }
    }
    assertTrue(left[peak - 1] < 0.12, "down before the peak: " + left[peak - 1]);
    assertTrue(steepest < 0.002, "no step in the gain: " + steepest);
    assertEquals(0.25f, left[RATE - 1], "recovered");
  }

  /** What is held back comes back by a factor of e in 80 ms: slow enough not to be heard. */
  @Test
  void theGainRecoversInEightyMilliseconds() {
    float[] left = new float[RATE];
    Arrays.fill(left, 0.25f);
    left[10_000] = 4;
    Limiter limiter = new Limiter(RATE);
    limiter.process(left, new float[RATE], RATE);

    int from = 10_000 + 2 * limiter.delayFrames();
    double before = 1 - left[from] / 0.25;
    double after = 1 - left[from + RATE * 80 / 1000] / 0.25;
    assertTrue(before > 0.5, "held back by " + before);
    assertEquals(1 / Math.E, after / before, 0.02);
  }

  @Test
  void bothSidesShareOneGain() {
    float[] left = noise(3, 8_000);
    float[] right = left.clone();
    for (int i = 0; i < right.length; i++) {
      right[i] *= 0.5f;
    }
    new Limiter(RATE).process(left, right, 8_000);
    for (int i = 0; i < left.length; i++) {
      assertEquals(left[i] * 0.5f, right[i], 1e-7);
    }
  }

  /** Quiet blocks take a short cut; where it begins and ends must not be heard. */
  @Test
  void theSizeOfTheBlocksChangesNothing() {
    float[] wave = noise(0.5, 40_000);
    for (int loud : new int[] {3_000, 3_100, 20_001}) {
      wave[loud] = 1.7f;
    }
    float[] whole = wave.clone();
    new Limiter(RATE).process(whole, wave.clone(), whole.length);
    for (int size : new int[] {1, 7, 144, 256}) {
      Limiter limiter = new Limiter(RATE);
      for (int from = 0; from + size <= wave.length; from += size) {
        float[] block = Arrays.copyOfRange(wave, from, from + size);
        limiter.process(block, block.clone(), size);
        assertArrayEquals(Arrays.copyOfRange(whole, from, from + size), block, "blocks of " + size);
      }
    }
  }

  private static float[] noise(double peak, int frames) {
    Noise noise = new Noise(7);
    float[] samples = new float[frames];
    for (int i = 0; i < frames; i++) {
      samples[i] = (float) (peak * noise.next());
    }
    return samples;
  }
}
