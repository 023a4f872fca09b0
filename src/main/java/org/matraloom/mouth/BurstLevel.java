package org.matraloom.mouth;

/** Turns down what peaks too high before a vowel, as where a mouth is close to the microphone. */
final class BurstLevel {

  /** How long before the vowel the sound is at its own level again. */
  private static final int BACK_FRAMES = 128;

  private BurstLevel() {}

  /**
   * Holds the part before a vowel under a peak.
   *
   * @param wave changed in place
   * @param vowel where the vowel begins
   * @param most the highest peak that may lie before it; nothing is done where that is 0
   */
  static void hold(float[] wave, int vowel, double most) {
    double burst = peak(wave, 0, vowel);
    if (burst <= most || most == 0) {
      return;
    }
    for (int i = 0; i < vowel; i++) {
      double own = FadeShape.at(Math.max(0, 1 - (double) (vowel - i) / BACK_FRAMES));
      double held = wave[i] * (own + (1 - own) * most / burst);
      wave[i] = (float) Math.max(-most, Math.min(most, held));
    }
  }

  /** The highest peak in a part of a wave. */
  static double peak(float[] wave, int from, int to) {
    double peak = 0;
    for (int i = from; i < to; i++) {
      peak = Math.max(peak, Math.abs(wave[i]));
    }
    return peak;
  }
}
