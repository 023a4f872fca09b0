package org.matraloom.mouth;

import java.util.Optional;
import org.matraloom.voice.PhoneConsonant;
import org.matraloom.voice.PhoneManner;
import org.matraloom.voice.PhoneSyllable;

/**
 * The band of a sound whose rise is taken for the beginning of a vowel, after F. Cummins and R.
 * Port, J. Phonetics 26 (1998) 145-171.
 */
enum OnsetBand {
  /** The voice and the first formant, which set in after a closure. */
  VOICE(150, 900),
  /** What lies above them, which sets in where a murmur opens. */
  OPEN(600, 3500);

  private final double lowHz;
  private final double highHz;

  OnsetBand(double lowHz, double highHz) {
    this.lowHz = lowHz;
    this.highHz = highHz;
  }

  /** The band that tells where the vowel of a syllable begins. */
  static OnsetBand of(PhoneSyllable syllable) {
    return opensBy(syllable, PhoneManner.NASAL) || opensBy(syllable, PhoneManner.APPROXIMANT)
        ? OPEN
        : VOICE;
  }

  /**
   * The band that must not rise before the vowel; empty for a tap, which is a dip in the voice. Of
   * what the lexicon does not know the voice tells the vowel.
   */
  static Optional<OnsetBand> rising(Optional<PhoneSyllable> syllable) {
    return syllable.filter(each -> opensBy(each, PhoneManner.TAP)).isPresent()
        ? Optional.empty()
        : Optional.of(syllable.map(OnsetBand::of).orElse(VOICE));
  }

  /** Whether the consonant before the vowel has a manner. */
  static boolean opensBy(PhoneSyllable syllable, PhoneManner manner) {
    return syllable
        .lastBeforeVowel()
        .map(PhoneConsonant::manner)
        .filter(manner::equals)
        .isPresent();
  }

  double lowHz() {
    return lowHz;
  }

  double highHz() {
    return highHz;
  }
}
