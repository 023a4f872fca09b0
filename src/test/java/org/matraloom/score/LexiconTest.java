package org.matraloom.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LexiconTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  private static String spelt(String word) {
    return LEXICON.split(word).stream()
        .flatMap(List::stream)
        .map(Sollu::spelling)
        .collect(Collectors.joining(" "));
  }

  private static String said(String word) {
    return LEXICON.split(word).stream()
        .flatMap(List::stream)
        .map(Sollu::sound)
        .collect(Collectors.joining(" "));
  }

  @Test
  void thereAreSoundsEnough() {
    assertTrue(LEXICON.sounds().size() >= 70, "sounds: " + LEXICON.sounds().size());
    Set<String> spellings = new HashSet<>();
    for (SolluSound sound : LEXICON.sounds()) {
      for (String spelling : sound.spellings()) {
        assertTrue(spellings.add(spelling), spelling + " belongs to one sound");
        assertEquals(Optional.of(sound), LEXICON.sound(spelling));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ta", "tha", "da", "dha", "di", "dhi", "dhim", "dhin", "din", "ding", "ka", "ki", "ku",
        "ga", "gi", "gu", "na", "ṇa", "nu", "ṇu", "nam", "tom", "thom", "tam", "tham", "jo", "ju",
        "jem", "jham", "jha", "jhe", "ri", "ra", "ru", "lan", "lam", "la", "mi", "ma", "mu", "num",
        "dum", "dim", "dom", "thi", "tum", "tan", "tin", "kum", "ṭa", "taa", "thaa", "dhii"
      })
  void commonSollusAreKnown(String spelling) {
    assertTrue(LEXICON.sound(spelling).isPresent());
  }

  @ParameterizedTest
  @CsvSource({
    "tha, ta",
    "tah, ta",
    "TA, ta",
    "tā, taa",
    "thaa, taa",
    "dheem, dhim",
    "dhīm, dhim",
    "dhiim, dhim",
    "thom, tom",
    "tōm, tom",
    "tham, tam",
    "taam, tam",
    "jhaam, jham",
    "ṭa, ṭa",
    "ṭha, ṭa",
    "ṇa, ṇa",
    "mee, mi",
    "thi, ti",
    "thee, tii",
    "kka, ka",
    "ghi, gi",
    "thei, tei",
    "no, nu",
    "laan, lan",
    "thath, tat",
    "naam, nam"
  })
  void spellingVariantsAreOneSound(String spelling, String name) {
    assertEquals(name, LEXICON.sound(spelling).orElseThrow().name());
  }

  @Test
  void dhinAndDinStayApart() {
    assertEquals("dhin", LEXICON.sound("dheen").orElseThrow().name());
    assertEquals("din", LEXICON.sound("din").orElseThrow().name());
  }

  @ParameterizedTest
  @CsvSource({
    "takadimi, ta ka di mi",
    "takita, ta ki ta",
    "thakitta, tha ki tta",
    "kida, ki da",
    "takajunu, ta ka ju nu",
    "takajonu, ta ka jo nu",
    "thakajanu, tha ka ja nu",
    "takajuno, ta ka ju no",
    "jhanu, jha nu",
    "tadiginatom, ta di gi na tom",
    "thadhiginathom, tha dhi gi na thom",
    "tadinginatom, ta din gi na tom",
    "ginathom, gi na thom",
    "kinatom, ki na tom",
    "kinathom, ki na thom",
    "ghinathom, ghi na thom",
    "tharikita, tha ri ki ta",
    "tarikida, ta ri ki da",
    "tharikida, tha ri ki da",
    "tirikita, ti ri ki ta",
    "thalangu, tha lan gu",
    "talaangu, ta laan gu",
    "tan-gu, tan gu",
    "tangu, tan gu",
    "takundari, ta kun da ri",
    "takathimi, ta ka thi mi",
    "takadhimi, ta ka dhi mi",
    "tatha, ta tha",
    "tahatajham, ta ha ta jham",
    "dhittangu, dhit tan gu",
    "kitathaka, ki ta tha ka",
    "takadiku, ta ka di ku",
    "dheemtha, dheem tha",
    "tōmtakita, tōm ta ki ta",
    "dinna, din na",
    "giṇatom, gi ṇa tom",
    "takiṭa, ta ki ṭa",
    "takiTa, ta ki Ta",
    "giTa, gi Ta",
    "tarikiṭa, ta ri ki ṭa",
    "jagajaga, ja ga ja ga",
    "nakadhin, na ka dhin",
    "theitheitha, thei thei tha"
  })
  void runTogetherWordsAreSplit(String word, String sollus) {
    assertEquals(sollus, spelt(word));
  }

  @ParameterizedTest
  @CsvSource({
    "takita, ta ki ṭa",
    "ta-ki-ta, ta ki ṭa",
    "tarikida, ta ri ki ṭa",
    "tadiginatom, ta di gi ṇa tom",
    "takajonu, ta ka jo ṇu",
    "takajunu, ta ka ju ṇu",
    "takadimi, ta ka di mi",
    "takatakita, ta ka ta ki ṭa",
    "nata, na ta"
  })
  void companyChangesTheSound(String word, String sounds) {
    assertEquals(sounds, said(word));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-", "ta-", "-ta", "ta--ka", "x", "takq", "ta1", "t", "ta ka", "hta"})
  void whatCannotBeCoveredIsNotSplit(String word) {
    assertEquals(Optional.empty(), LEXICON.split(word));
  }

  static Stream<Integer> sizes() {
    return IntStream.rangeClosed(1, Lexicon.LARGEST_GROUP).boxed();
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void wordsForAGroupSplitBackIntoThemselves(int size) {
    List<List<Sollu>> choices = LEXICON.wordChoices(size);
    assertTrue(choices.size() >= 2, "choices for " + size);
    assertEquals(choices.size(), new HashSet<>(choices).size(), "choices differ");
    assertEquals(choices.get(0), LEXICON.words(size));
    for (List<Sollu> words : choices) {
      assertEquals(size, words.size());
      String together = words.stream().map(Sollu::spelling).collect(Collectors.joining());
      assertEquals(Optional.of(words), LEXICON.split(together), together);
    }
  }

  /** Nelson, Solkattu Manual (Wesleyan University Press, 2014), opening lesson, plain spelling. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "ta",
        "di",
        "tom",
        "nam",
        "jem",
        "tam",
        "ta ka",
        "di mi",
        "jo nu",
        "ta ki ta",
        "ta ka di mi",
        "ta ka jo nu",
        "ta ka di ku",
        "ta ka ta ki ta",
        "ta di ki ta tom",
        "ta din gi na tom",
        "ta ka di mi ta ka",
        "ta ki ta ta ki ta",
        "ta ka di mi ta ki ta",
        "ta ka ta di ki ta tom",
        "ta ka ta din gi na tom",
        "ta ka di mi ta ka jo nu",
        "ta ki ta ta di ki ta tom",
        "ta ki ta ta din gi na tom",
        "ta ka di mi ta ka ta ki ta",
        "ta ka di ku ta di ki ta tom",
        "ta ka di ku ta din gi na tom"
      })
  void publishedWordsAreAmongTheChoices(String words) {
    List<String> choices =
        LEXICON.wordChoices(words.split(" ").length).stream()
            .map(choice -> choice.stream().map(Sollu::spelling).collect(Collectors.joining(" ")))
            .toList();
    assertTrue(choices.contains(words), choices.toString());
  }

  @Test
  void groupsOutsideTheRangeAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> LEXICON.words(0));
    assertThrows(IllegalArgumentException.class, () -> LEXICON.words(100));
  }

  @ParameterizedTest
  @CsvSource({
    "takadimo, takadimi",
    "takqta, takita",
    "tadiginatom-, tadiginatom",
    "tadigimatop, tadigimatom",
    "xom, tom",
    "takajxnu, takajonu",
    "qqqqqq, ",
    "x, "
  })
  void theNearestWordIsOffered(String word, String nearest) {
    assertEquals(Optional.ofNullable(nearest), LEXICON.nearest(word));
  }

  @Test
  void aListOfTheUsersIsAdded() {
    Lexicon own =
        LEXICON.plus(
            "\ufeff# mine\r\nkran : kran : k r a n\r\nta : tho :t a\r\n2 = ta kran", "my.txt");
    assertEquals(List.of("k", "r", "a", "n"), own.sound("kran").orElseThrow().phones());
    assertEquals(2, own.sound("kran").orElseThrow().vowelIndex());
    assertEquals("ta", own.sound("tho").orElseThrow().name());
    assertEquals(List.of("to"), own.sound("to").orElseThrow().spellings());
    assertEquals("ta", own.sound("tha").orElseThrow().name());
    assertEquals("kran", own.words(2).get(1).sound());
    assertEquals(4, own.wordChoices(2).size());
    assertTrue(LEXICON.sound("kran").isEmpty());
  }

  @Test
  void everyFaultyLineIsNamed() {
    String text =
        """
        kran : kran
        kraq : kraq : k q a
        krak : : k r k
        krap : kran : k r a p
        kram : kran : k r a m
        kr4m : : k r a m
        kraam : : k r k r a m
        5 = ta ka
        0 = ta
        2 = ta xx
        ki + xx = ta
        ki ta = + ta + ta
        """;
    LexiconException error =
        assertThrows(LexiconException.class, () -> LEXICON.plus(text, "my.txt"));
    assertEquals(
        """
        my.txt:1: error: expected "name : spellings : phones", as in "dhim : dhim dheem : dh i m"
        my.txt:2: error: unknown phone "q"
        my.txt:3: error: a sollu has one vowel, given 0
        my.txt:5: error: "kran" is already given in line 4
        my.txt:6: error: a spelling has 1 to 16 letters, given "kr4m"
        my.txt:7: error: a sollu has at most 2 consonants before its vowel and after it
        my.txt:8: error: words for 5 must be 5 matras, given 2
        my.txt:9: error: expected "size = words" with a size of 1 to 99, as in "5 = ta di gi na tom"
        my.txt:10: error: "xx" is not a spelling of any sollu
        my.txt:11: error: "xx" is not the name of a sound
        my.txt:12: error: expected "before + after = sound", as in "ki + ta = ṭa\"""",
        error.getMessage());
    assertEquals(11, error.faults().size());
    assertEquals(1, error.faults().get(0).line());
  }

  @Test
  void aSpoiltListIsRefusedOrObeyedButNeverBreaks() throws IOException {
    String list;
    try (InputStream in = Lexicon.class.getResourceAsStream("sollus.txt")) {
      list = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    String[] lines = list.split("\n");
    String[] pieces = {
      ":", "=", "+", "#", "ṭ", "\u0323", "7", "100", " ", "\u0000", "x", "aa", "\ud800"
    };
    SplittableRandom random = new SplittableRandom(5);
    int refused = 0;
    for (int number = 0; number < 2_000; number++) {
      StringBuilder own = new StringBuilder();
      for (int line = 0; line < 3; line++) {
        own.append(lines[random.nextInt(lines.length)]).append('\n');
      }
      int at = random.nextInt(own.length());
      own.replace(at, at + random.nextInt(2), pieces[random.nextInt(pieces.length)]);
      try {
        Lexicon spoilt = LEXICON.plus(own.toString(), "own.txt");
        assertTrue(spoilt.sounds().size() >= LEXICON.sounds().size());
      } catch (LexiconException e) {
        refused++;
        assertFalse(e.faults().isEmpty());
      }
    }
    assertTrue(refused > 100 && refused < 1_900, "refused: " + refused);
  }

  @Test
  void aListOfOnesOwnMaySayHowFastTheMouthIs() {
    assertTrue(Lexicon.standard().fastestPerSecond().isEmpty());
    Lexicon own = Lexicon.standard().plus("fastest = 9.5  # a second\nrii : rii : r ii", "own");
    assertEquals(9.5, own.fastestPerSecond().orElseThrow());
    assertEquals(9.5, own.plus("rei : rei : r ee", "more").fastestPerSecond().orElseThrow());
    for (String wrong : List.of("fastest = 0.5", "fastest = 20.5", "fastest = much", "fastest =")) {
      LexiconException fault =
          assertThrows(LexiconException.class, () -> Lexicon.standard().plus(wrong, "own"), wrong);
      assertTrue(fault.getMessage().contains("from 1 to 20"), fault.getMessage());
    }
  }
}
