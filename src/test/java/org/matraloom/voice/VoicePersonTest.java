package org.matraloom.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The vowel targets are the published ones. */
class VoicePersonTest {

  /**
   * F1 and F2: Greek men, Fourakis, Botinis and Katsaiti, Phonetica 56 (1999). F3: men of Peterson
   * and Barney 1952. Ratios 1.17, 1.18, 1.14: Kent and Vorperian 2018.
   */
  @ParameterizedTest
  @CsvSource({
    "A, 738, 1350, 2440",
    "I, 340, 2046, 3010",
    "U, 349, 996, 2240",
    "E, 491, 1788, 2480",
    "O, 508, 1020, 2410"
  })
  void targetsArePublished(PhoneVowel vowel, double f1, double f2, double f3) {
    assertEquals(new PhoneFormants(f1, f2, f3), VoicePerson.LOW.target(vowel));
    PhoneFormants high = VoicePerson.HIGH.target(vowel);
    assertEquals(1.17 * f1, high.f1(), 1e-9);
    assertEquals(1.18 * f2, high.f2(), 1e-9);
    assertEquals(1.14 * f3, high.f3(), 1e-9);
  }
}
