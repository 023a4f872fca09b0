package org.matraloom.score;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One sound of the lexicon: a sollu with all the ways it is spelt, and how it is said.
 *
 * <p>The phones are plain tokens. Consonants: {@code t} dental, {@code th} aspirated dental, {@code
 * T} retroflex, {@code d dh D} likewise voiced, {@code k g ng}, {@code j jh ch}, {@code n} dental,
 * {@code N} retroflex, {@code m r l y v b p h}. Vowels: {@code a i u e o} and, long, {@code aa ii
 * uu ee oo}.
 *
 * @param name the name in plain romanisation, such as "ta" or "ṭa"
 * @param spellings the spellings in normal form (lower case, long marks written as letters)
 * @param phones up to two consonants, one vowel, up to two consonants
 */
public record SolluSound(String name, List<String> spellings, List<String> phones) {

  private static final Set<String> VOWELS =
      Set.of("a", "aa", "i", "ii", "u", "uu", "e", "ee", "o", "oo");

  private static final Set<String> CONSONANTS =
      Set.of(
          "t", "th", "T", "d", "dh", "D", "k", "g", "j", "jh", "ch", "m", "n", "N", "ng", "r", "l",
          "y", "v", "p", "b", "h");

  private static final int MOST_CONSONANTS = 2;

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if the phones do not make a syllable
   */
  public SolluSound {
    spellings = List.copyOf(spellings);
    phones = List.copyOf(phones);
    Optional<String> fault = faultOf(phones);
    if (fault.isPresent()) {
      throw new IllegalArgumentException(fault.get());
    }
  }

  /**
   * Whether a phone is a vowel.
   *
   * @param phone a phone of a sound
   * @return true for a vowel, false for a consonant
   */
  public static boolean isVowel(String phone) {
    return VOWELS.contains(phone);
  }

  /**
   * Where the vowel stands.
   *
   * @return its index in {@link #phones()}
   */
  public int vowelIndex() {
    int index = 0;
    while (!isVowel(phones.get(index))) {
      index++;
    }
    return index;
  }

  static Optional<String> faultOf(List<String> phones) {
    int vowels = 0;
    for (String phone : phones) {
      if (isVowel(phone)) {
        vowels++;
      } else if (!CONSONANTS.contains(phone)) {
        return Optional.of("unknown phone \"" + phone + "\"");
      }
    }
    if (vowels != 1) {
      return Optional.of("a sollu has one vowel, given " + vowels);
    }
    int before = 0;
    while (!isVowel(phones.get(before))) {
      before++;
    }
    if (before > MOST_CONSONANTS || phones.size() - before - 1 > MOST_CONSONANTS) {
      return Optional.of(
          "a sollu has at most " + MOST_CONSONANTS + " consonants before its vowel and after it");
    }
    return Optional.empty();
  }
}
