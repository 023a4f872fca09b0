package org.matraloom.voice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is said in one sollu.
 *
 * @param onset consonants before the vowel, perhaps none
 * @param vowel the vowel
 * @param coda consonants after it, perhaps none
 */
public record PhoneSyllable(
    List<PhoneConsonant> onset, PhoneVowel vowel, List<PhoneConsonant> coda) {

  /** Copies the lists. */
  public PhoneSyllable {
    onset = List.copyOf(onset);
    coda = List.copyOf(coda);
  }

  /**
   * Reads the phones of a lexicon entry.
   *
   * @param phones as in {@link org.matraloom.score.SolluSound}
   * @return the syllable
   * @throws IllegalArgumentException if a phone is unknown or there is not exactly one vowel
   */
  public static PhoneSyllable of(List<String> phones) {
    List<PhoneConsonant> onset = new ArrayList<>();
    List<PhoneConsonant> coda = new ArrayList<>();
    Optional<PhoneVowel> vowel = Optional.empty();
    for (String phone : phones) {
      Optional<PhoneConsonant> consonant = PhoneConsonant.of(phone);
      if (consonant.isPresent()) {
        (vowel.isPresent() ? coda : onset).add(consonant.get());
      } else if (vowel.isPresent() || PhoneVowel.of(phone).isEmpty()) {
        throw new IllegalArgumentException(
            "a sollu is known consonants around one vowel, given " + phones);
      } else {
        vowel = PhoneVowel.of(phone);
      }
    }
    return new PhoneSyllable(
        onset,
        vowel.orElseThrow(
            () -> new IllegalArgumentException("a sollu has one vowel, given " + phones)),
        coda);
  }

  /**
   * How long the consonants before the vowel are at a slow rate, in seconds.
   *
   * @return seconds
   */
  public double onsetSeconds() {
    return onset.stream().mapToDouble(PhoneConsonant::seconds).sum();
  }

  /**
   * The first consonant, if the sollu begins with one.
   *
   * @return the consonant; empty if the sollu begins with its vowel
   */
  public Optional<PhoneConsonant> first() {
    return onset.isEmpty() ? Optional.empty() : Optional.of(onset.get(0));
  }

  /**
   * The consonant that opens into the vowel, if there is one.
   *
   * @return the consonant; empty if there is none
   */
  public Optional<PhoneConsonant> lastBeforeVowel() {
    return onset.isEmpty() ? Optional.empty() : Optional.of(onset.get(onset.size() - 1));
  }

  /**
   * Whether the vowel closes into a nasal that can ring.
   *
   * @return true if it does
   */
  public boolean closesIntoNasal() {
    return !coda.isEmpty() && coda.get(0).manner() == PhoneManner.NASAL;
  }
}
