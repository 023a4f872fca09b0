package org.matraloom.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Lexicon;

/** Every sound of the lexicon can be said. */
class PhoneSyllableTest {

  @Test
  void everySoundOfTheLexiconIsASyllable() {
    int said = 0;
    for (var sound : Lexicon.standard().sounds()) {
      PhoneSyllable syllable = PhoneSyllable.of(sound.phones());
      assertEquals(
          sound.phones().size(),
          syllable.onset().size() + 1 + syllable.coda().size(),
          sound.name());
      said++;
    }
    assertTrue(said >= 60, "sollus in common use: " + said);
  }

  @Test
  void readsOnsetVowelAndCoda() {
    PhoneSyllable ding = PhoneSyllable.of(List.of("d", "i", "ng"));
    assertEquals(List.of(PhoneConsonant.D), ding.onset());
    assertEquals(PhoneVowel.I, ding.vowel());
    assertEquals(List.of(PhoneConsonant.NG), ding.coda());
    assertTrue(ding.closesIntoNasal());
    assertEquals(PhoneVowel.A, PhoneSyllable.of(List.of("t", "aa")).vowel());
  }

  @Test
  void refusesWhatNobodyCanSay() {
    assertThrows(IllegalArgumentException.class, () -> PhoneSyllable.of(List.of("t", "k")));
    assertThrows(IllegalArgumentException.class, () -> PhoneSyllable.of(List.of("t", "a", "i")));
    assertThrows(IllegalArgumentException.class, () -> PhoneSyllable.of(List.of("q", "a")));
  }

  /** Retroflex at most dental, dental below velar, all unaspirated: Lisker and Abramson 1964. */
  @Test
  void voiceSetsInSoonAndInOrderOfPlace() {
    double retroflex = PhoneConsonant.RETROFLEX_T.lagSeconds();
    double dental = PhoneConsonant.T.lagSeconds();
    double velar = PhoneConsonant.K.lagSeconds();
    assertTrue(retroflex <= dental && dental < velar && velar < 0.035);
  }
}
