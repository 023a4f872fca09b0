package org.matraloom.mouth;

import org.matraloom.voice.VoiceEffort;

/** Makes a recorded voice duller where half voice is asked for. */
final class HalfVoice {

  private static final double CORNER_HZ = 1000;

  /** With this much left far above the corner, 8 dB are gone at 3 kHz. */
  private static final double LEFT_ABOVE = 0.26;

  private HalfVoice() {}

  static void soften(float[] wave, VoiceEffort effort, int ratePerSecond) {
    if (effort.tiltDb() == 0) {
      return;
    }
    double keep = StrictMath.exp(-2 * Math.PI * CORNER_HZ / ratePerSecond);
    double low = 0;
    for (int i = 0; i < wave.length; i++) {
      low = wave[i] + (low - wave[i]) * keep;
      wave[i] = (float) (low + LEFT_ABOVE * (wave[i] - low));
    }
  }
}
