package org.matraloom.mouth;

import java.util.Arrays;

/**
 * Keeps what sounds before a vowel under the vowel's own rise, so that no swing of the voice in a
 * breath or a hiss, and no low burst, is taken for the vowel where the consonant has little time.
 *
 * <p>Turned down is what lies in and beside the band whose rise tells where a vowel begins ({@link
 * OnsetBand}): all that is below a murmur's opening is left, or all that is above the first
 * formant, as are bursts. It is touched only where that band is stronger than that.
 */
final class VowelRise {

  /** Clearly under half of the way, where the vowel begins. */
  private static final double MOST_SHARE = 0.35;

  private static final double TOP_SECONDS = 0.014;

  /** In so long the sound comes back to itself before the vowel. */
  private static final double BACK_SECONDS = 0.004;

  private VowelRise() {}

  /**
   * Turns down what is too strong before a vowel.
   *
   * @param sound changed in place, not from the vowel on
   * @param vowel the frame where it begins
   * @param band what tells it
   * @param ratePerSecond the rate of the sound
   */
  static void clear(float[] sound, int vowel, OnsetBand band, int ratePerSecond) {
    int end = Math.min(sound.length, vowel + (int) (2 * TOP_SECONDS * ratePerSecond));
    if (vowel <= 0 || vowel >= end) {
      return;
    }
    BandLevel level = BandLevel.of(sound, 0, end, band, ratePerSecond);
    double[] part = beside(Arrays.copyOf(sound, end), band, ratePerSecond);
    int top = level.top(vowel, Math.min(end, vowel + (int) (TOP_SECONDS * ratePerSecond)));
    double most = MOST_SHARE * level.at(top);
    double back = BACK_SECONDS * ratePerSecond;
    for (int i = 0; i < vowel; i++) {
      double least = level.at(i) > most ? most / level.at(i) : 1;
      double held = FadeShape.at(Math.min(1, (vowel - i) / back));
      sound[i] -= (float) (held * (1 - least) * part[i]);
    }
  }

  /** All below the upper end of the voice's band, all above the lower end of the other. */
  private static double[] beside(float[] sound, OnsetBand band, int ratePerSecond) {
    if (band == OnsetBand.VOICE) {
      return BandLevel.below(sound, band.highHz() / ratePerSecond);
    }
    double[] part = BandLevel.below(sound, band.lowHz() / ratePerSecond);
    for (int i = 0; i < part.length; i++) {
      part[i] = sound[i] - part[i];
    }
    return part;
  }
}
