package org.matraloom.voice;

/**
 * The noise of a consonant that bursts or hisses: its spectrum, how strong it is and how long.
 *
 * <p>Spectra: diffuse and rising for the tongue tip, diffuse and falling for the lips, one compact
 * peak for the back (S. E. Blumstein and K. N. Stevens, J. Acoust. Soc. Am. 66 (1979) 1001-1017).
 * Peaks near 3660 Hz for t, and 2720, 1770 and 1250 Hz for k before front, unrounded and rounded
 * vowels (V. W. Zue, Acoustic characteristics of stop consonants, MIT thesis, 1976). Lengths of
 * about 4, 6 and 12 ms for lips, tip and back (M. F. Dorman, M. Studdert-Kennedy and L. J. Raphael,
 * Percept. Psychophys. 22 (1977) 109-122).
 *
 * @param spectrum its resonances
 * @param level how strong, against the voice
 * @param seconds how long before it dies away
 */
record PhoneBurst(PhoneNoise spectrum, double level, double seconds) {

  /** No burst. */
  static final PhoneBurst NONE = new PhoneBurst(PhoneNoise.NONE, 0, 0);

  /** The burst of a consonant before a vowel; none if it does not burst. */
  static PhoneBurst of(VoicePerson person, PhoneConsonant consonant, PhoneVowel vowel) {
    PhoneBurst burst =
        switch (consonant.manner()) {
          case VOICELESS_STOP, VOICED_STOP -> stop(consonant.place(), vowel);
          case VOICELESS_AFFRICATE, VOICED_AFFRICATE -> hiss();
          case NASAL, TAP, APPROXIMANT, BREATH -> NONE;
        };
    return new PhoneBurst(burst.spectrum.scaled(person.ratio3()), burst.level, burst.seconds);
  }

  private static PhoneBurst stop(PhonePlace place, PhoneVowel vowel) {
    return switch (place) {
      case LABIAL ->
          new PhoneBurst(PhoneNoise.of(800, 800, 0, 1800, 1300, -6, 3200, 1800, -12), 0.15, 0.004);
      case DENTAL ->
          new PhoneBurst(PhoneNoise.of(1700, 500, -10, 3660, 1100, 0, 5400, 1800, 1), 0.70, 0.006);
      case RETROFLEX ->
          new PhoneBurst(PhoneNoise.of(2350, 500, 0, 3300, 900, -2, 5000, 1600, -8), 0.60, 0.005);
      case PALATAL -> hiss();
      case VELAR ->
          new PhoneBurst(
              PhoneNoise.of(velarPeakHz(vowel), 350, 0, 3600, 800, -10, 5200, 1800, -18),
              0.90,
              0.012);
    };
  }

  private static PhoneBurst hiss() {
    return new PhoneBurst(PhoneNoise.of(2600, 500, 0, 3700, 800, -6, 5600, 1800, -9), 0.9, 0.010);
  }

  private static double velarPeakHz(PhoneVowel vowel) {
    if (vowel.isFront()) {
      return 2720;
    }
    return vowel.isRounded() ? 1250 : 1770;
  }
}
