package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.matraloom.staircase.StairStep;
import org.matraloom.wav.PcmFormat;

/** Two taps up, one low tone down, nothing for the same. */
class DecisionSoundTest {

  private static final int RATE = 48_000;

  /** How often the sound begins anew: the level of 10 ms rises by more than four times. */
  private static int beginnings(byte[] pcm) {
    int count = 0;
    double before = 1e-3;
    for (int from = 0; from + 960 <= pcm.length; from += 960) {
      double peak = 1;
      for (int i = from; i < from + 960; i += 2) {
        peak = Math.max(peak, Math.abs((short) (pcm[i] & 0xFF | pcm[i + 1] << 8)));
      }
      count += peak > 4 * before && peak > 500 ? 1 : 0;
      before = peak;
    }
    return count;
  }

  @Test
  void aDecisionIsToldByItsSound() {
    PcmFormat mono = new PcmFormat(RATE, 16, 1);
    assertEquals(2, beginnings(DecisionSound.of(StairStep.Move.UP, mono)));
    assertEquals(1, beginnings(DecisionSound.of(StairStep.Move.DOWN, mono)));
    assertEquals(0, DecisionSound.of(StairStep.Move.SAME, mono).length);
  }
}
