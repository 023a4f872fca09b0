package org.matraloom.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.matraloom.score.Finger;
import org.matraloom.score.Kriya;
import org.matraloom.score.Sollu;
import org.matraloom.score.SolluSound;
import org.matraloom.sheet.Sheets;

/** Sollus, nadais and kriyas as published pages write them. */
class ScriptCellsTest {

  /**
   * Attested words. Tamil: Tamil Wikipedia, "தாள நடைகள்", 2006. Telugu: a Telugu lyric page with
   * తకిట తధిమి. Malayalam: Malayalam Wikipedia, "തക്കിട്ട".
   */
  @ParameterizedTest
  @CsvSource({
    "TAMIL, takita, தகிட",
    "TAMIL, takadimi, தகதிமி",
    "TAMIL, taka takita, தக தகிட",
    "TAMIL, takita takadimi, தகிட தகதிமி",
    "TAMIL, takadimi taka takita, தகதிமி தக தகிட",
    "TELUGU, takita, తకిట",
    "TELUGU, takita tadhimi, తకిట తధిమి",
    "MALAYALAM, takkitta, തക്കിട്ട"
  })
  void attestedWordsComeOutToTheLetter(Script script, String words, String expected) {
    assertEquals(expected, inScript(script, words));
  }

  /** Derived by ISO 15919, letter for letter; to be read by someone who reads the script. */
  @ParameterizedTest
  @CsvSource({
    "KANNADA, takita, ತಕಿಟ",
    "KANNADA, takadimi, ತಕದಿಮಿ",
    "KANNADA, takadhimi, ತಕಧಿಮಿ",
    "KANNADA, tadiginatom, ತದಿಗಿಣತೊಮ್",
    "TELUGU, takadimi, తకదిమి",
    "TELUGU, tadiginatom, తదిగిణతొమ్",
    "MALAYALAM, takita, തകിട",
    "MALAYALAM, takadhimi, തകധിമി",
    "MALAYALAM, tadiginatom, തദിഗിണതൊം",
    "DEVANAGARI, takita, तकिट",
    "DEVANAGARI, takadimi, तकदिमि",
    "DEVANAGARI, tadiginatom, तदिगिणतोम्",
    "TAMIL, tadiginatom, ததிகிணதொம்",
    "TAMIL, talangu, தலங்கு",
    "MALAYALAM, dhin, ധിൻ",
    "ISO15919, takita, takiṭa",
    "ISO15919, tadiginatom, tadigiṇatom"
  })
  void derivedWordsFollowTheMapping(Script script, String words, String expected) {
    assertEquals(expected, inScript(script, words));
  }

  /**
   * Nadais. Tamil: as above. Kannada: Karnataka Sangita Sabda Kosa, ambuda.org. Telugu: Telugu
   * Wikipedia, "తాళాలు". Malayalam: a metre book of 1930, Malayalam Wikisource. Devanagari: Sangit
   * Visharad, Hindi Wikisource.
   */
  @ParameterizedTest
  @CsvSource({
    "TAMIL, 3, திஸ்ர நடை",
    "TAMIL, 4, சதுஸ்ர நடை",
    "TAMIL, 5, கண்ட நடை",
    "TAMIL, 7, மிஸ்ர நடை",
    "TAMIL, 9, சங்கீர்ண நடை",
    "KANNADA, 4, ಚತುರಶ್ರ ಗತಿ",
    "TELUGU, 3, త్రిశ్ర",
    "TELUGU, 4, చతురశ్ర",
    "TELUGU, 5, ఖండ",
    "TELUGU, 7, మిశ్ర",
    "TELUGU, 9, సంకీర్ణ",
    "MALAYALAM, 3, ത്രിശ്രം",
    "MALAYALAM, 4, ചതുരശ്ര",
    "MALAYALAM, 5, ഖണ്ഡം",
    "MALAYALAM, 7, മിശ്രം",
    "MALAYALAM, 9, സങ്കീർണ്ണം",
    "DEVANAGARI, 3, तिस्र",
    "DEVANAGARI, 4, चतस्र",
    "DEVANAGARI, 5, खंड",
    "DEVANAGARI, 7, मिश्र",
    "DEVANAGARI, 9, संकीर्ण"
  })
  void attestedNadaisStandBesideTheEnglishWord(Script script, int nadai, String expected) {
    assertEquals(Optional.of(expected), ScriptTerms.nadai(script, nadai));
  }

  /**
   * Kriyas. Tamil clap: Tamil Wikipedia, "அனுதிருதம்". Kannada: Karnataka Sangita Sabda Kosa.
   * Telugu count: Telugu Wikipedia, "తాళాలు". Malayalam: a page on the ways of putting tala, 2010.
   */
  @Test
  void attestedKriyasStandBesideTheEnglishWord() {
    Kriya clap = new Kriya.Clap();
    Kriya count = new Kriya.Count(Finger.RING);
    assertEquals(Optional.of("தட்டு"), ScriptTerms.kriya(Script.TAMIL, clap));
    assertEquals(Optional.of("ಏಟು"), ScriptTerms.kriya(Script.KANNADA, clap));
    assertEquals(Optional.of("ಎಣಿಕೆ"), ScriptTerms.kriya(Script.KANNADA, count));
    assertEquals(Optional.of("వ్రేళ్ళు ఎంచుట"), ScriptTerms.kriya(Script.TELUGU, count));
    assertEquals(Optional.of("അടി"), ScriptTerms.kriya(Script.MALAYALAM, clap));
    assertEquals(Optional.of("വീശ്"), ScriptTerms.kriya(Script.MALAYALAM, new Kriya.Wave()));
    assertEquals(Optional.empty(), ScriptTerms.kriya(Script.TAMIL, new Kriya.Wave()));
  }

  @Test
  void theUsersSpellingIsKept() {
    assertEquals("tha dhin gi nathom", inScript(Script.LATIN, "tha dhin gi nathom"));
  }

  @ParameterizedTest
  @EnumSource(
      value = Script.class,
      names = {"TAMIL", "KANNADA", "TELUGU", "MALAYALAM", "DEVANAGARI"})
  void everySoundOfTheLexiconHasLettersOfItsScript(Script script) {
    SolluWriting writing = new SolluWriting(script, Sheets.LEXICON);
    List<SolluSound> sounds = Sheets.LEXICON.sounds();
    assertTrue(sounds.size() > 100, "sounds were written: " + sounds.size());
    for (SolluSound sound : sounds) {
      String written = writing.alone(new Sollu(sound.name(), sound.name()));
      assertFalse(written.isEmpty(), sound.name());
      written
          .codePoints()
          .forEach(
              letter ->
                  assertEquals(
                      Character.UnicodeScript.valueOf(script.name()),
                      Character.UnicodeScript.of(letter),
                      sound.name() + " is written " + written));
    }
  }

  @Test
  void onlyTamilLosesDistinctionsAndSaysSo() {
    assertEquals(inScript(Script.TAMIL, "taka"), inScript(Script.TAMIL, "daga"));
    assertTrue(Script.TAMIL.loss().contains("one letter"));
    for (Script script : Script.values()) {
      if (script != Script.TAMIL) {
        assertEquals("", script.loss());
      }
    }
    for (Script script :
        List.of(Script.KANNADA, Script.TELUGU, Script.MALAYALAM, Script.DEVANAGARI)) {
      assertFalse(inScript(script, "taka").equals(inScript(script, "daga")), script.word());
    }
  }

  private static String inScript(Script script, String words) {
    SolluWriting writing = new SolluWriting(script, Sheets.LEXICON);
    return Arrays.stream(words.split(" "))
        .map(word -> writing.word(Sheets.LEXICON.split(word).orElseThrow()))
        .collect(Collectors.joining(" "));
  }
}
