package org.matraloom.voice;

import static org.matraloom.voice.KlattParameter.B1;
import static org.matraloom.voice.KlattParameter.B2;
import static org.matraloom.voice.KlattParameter.B3;
import static org.matraloom.voice.KlattParameter.F1;
import static org.matraloom.voice.KlattParameter.MOUTH_ZERO;
import static org.matraloom.voice.KlattParameter.NOSE_ZERO;
import static org.matraloom.voice.KlattParameter.TILT;

/**
 * The murmur of a closed mouth with an open nose.
 *
 * <p>A strong resonance near 250 Hz, little above it, and a zero that tells the place: m 1000 to
 * 1200 Hz, n 1600 to 1900 Hz, none for ng (K. N. Stevens, Acoustic Phonetics, 1998, chapter 9).
 */
final class VoiceNasal {

  private static final double MURMUR_HZ = 250;
  private static final double NOSE_ZERO_HZ = 550;
  private static final double MURMUR_TILT_DB = 2;

  private VoiceNasal() {}

  /**
   * Closes the mouth and opens the nose.
   *
   * @param score where it is written
   * @param person who speaks
   * @param place where the mouth is closed
   * @param atSeconds from when on
   * @param constantSeconds how slowly; 0 for at once
   */
  static void close(
      KlattScore score,
      VoicePerson person,
      PhonePlace place,
      double atSeconds,
      double constantSeconds) {
    score
        .approach(F1, atSeconds, MURMUR_HZ * person.ratio1(), constantSeconds)
        .approach(TILT, atSeconds, MURMUR_TILT_DB, constantSeconds)
        .approach(NOSE_ZERO, atSeconds, NOSE_ZERO_HZ * person.ratio1(), constantSeconds)
        .approach(MOUTH_ZERO, atSeconds, mouthZeroHz(place, person), constantSeconds)
        .approach(B1, atSeconds, 70, constantSeconds)
        .approach(B2, atSeconds, 250, constantSeconds)
        .approach(B3, atSeconds, 300, constantSeconds);
  }

  /** Opens the mouth again and shuts the nose. */
  static void open(KlattScore score, double atSeconds, double constantSeconds) {
    score
        .approach(NOSE_ZERO, atSeconds, KlattParameter.NOSE_HZ, constantSeconds)
        .approach(MOUTH_ZERO, atSeconds, KlattParameter.MOUTH_HZ, constantSeconds);
  }

  /** Lets the nose colour a vowel that is about to close; the zero is halfway (Klatt 1980). */
  static void colour(
      KlattScore score,
      VoicePerson person,
      PhoneVowel vowel,
      double atSeconds,
      double constantSeconds) {
    double half = (person.target(vowel).f1() + KlattParameter.NOSE_HZ) / 2;
    score.approach(NOSE_ZERO, atSeconds, Math.min(half, 450 * person.ratio1()), constantSeconds);
  }

  private static double mouthZeroHz(PhonePlace place, VoicePerson person) {
    return switch (place) {
      case LABIAL -> 1150 * person.ratio2();
      case DENTAL -> 1700 * person.ratio2();
      case RETROFLEX -> 1900 * person.ratio2();
      case PALATAL, VELAR -> KlattParameter.MOUTH_HZ;
    };
  }
}
