package org.matraloom.phonetics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.matraloom.score.SolluSound;

/**
 * What a phone is made of: how and where in the mouth a consonant is made, which vowel it is (P.
 * Ladefoged and K. Johnson, A Course in Phonetics, chapters 1 and 6; from memory). No retroflex was
 * learnt; it is made with the tip of the tongue as a dental is, and taken for one.
 */
final class PhoneTraits {

  private static final Map<String, List<String>> OF_CONSONANT =
      Map.ofEntries(
          Map.entry("t", List.of("stop", "dental")),
          Map.entry("th", List.of("stop", "dental")),
          Map.entry("T", List.of("stop", "dental")),
          Map.entry("k", List.of("stop", "velar")),
          Map.entry("p", List.of("stop", "labial")),
          Map.entry("d", List.of("voiced", "dental")),
          Map.entry("dh", List.of("voiced", "dental")),
          Map.entry("D", List.of("voiced", "dental")),
          Map.entry("g", List.of("voiced", "velar")),
          Map.entry("b", List.of("voiced", "labial")),
          Map.entry("ch", List.of("affricate", "palatal")),
          Map.entry("j", List.of("affricate", "palatal")),
          Map.entry("jh", List.of("affricate", "palatal")),
          Map.entry("n", List.of("nasal", "dental")),
          Map.entry("N", List.of("nasal", "dental")),
          Map.entry("ng", List.of("nasal", "velar")),
          Map.entry("m", List.of("nasal", "labial")),
          Map.entry("l", List.of("liquid", "dental")),
          Map.entry("r", List.of("liquid", "dental")),
          Map.entry("y", List.of("liquid", "palatal")),
          Map.entry("v", List.of("liquid", "labial")),
          Map.entry("h", List.of("breath")));

  private PhoneTraits() {}

  /**
   * The traits of the beginning of a sound: of its first consonant, and of its vowel.
   *
   * @param sound a sound of the lexicon
   * @param consonants whether those of the consonant are asked for
   * @param vowels whether that of the vowel is
   * @return their names as in the table; none for what no table knows
   */
  static List<String> of(SolluSound sound, boolean consonants, boolean vowels) {
    List<String> traits = new ArrayList<>();
    int vowel = sound.vowelIndex();
    if (consonants && vowel > 0) {
      traits.addAll(OF_CONSONANT.getOrDefault(sound.phones().get(0), List.of()));
    }
    if (vowels) {
      traits.add("vowel-" + sound.phones().get(vowel).charAt(0));
    }
    return traits;
  }
}
