package org.matraloom.voice;

import java.util.Locale;
import java.util.Optional;

/** The five vowels; how long one lasts is a matter of the score, not of the vowel. */
public enum PhoneVowel {
  /** As in ta. */
  A,
  /** As in ki. */
  I,
  /** As in ku. */
  U,
  /** As in tei. */
  E,
  /** As in tom. */
  O;

  /** The vowel of a phone such as "a" or "ii"; nothing for a consonant. */
  static Optional<PhoneVowel> of(String phone) {
    for (PhoneVowel vowel : values()) {
      String letter = vowel.name().toLowerCase(Locale.ROOT);
      if (phone.equals(letter) || phone.equals(letter + letter)) {
        return Optional.of(vowel);
      }
    }
    return Optional.empty();
  }

  /** Whether the tongue is far forward. */
  boolean isFront() {
    return this == I || this == E;
  }

  /** Whether the lips are rounded. */
  boolean isRounded() {
    return this == U || this == O;
  }
}
