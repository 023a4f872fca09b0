package org.matraloom.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Composition;
import org.matraloom.score.GroupWords;
import org.matraloom.score.Lexicon;
import org.matraloom.score.LexiconException;
import org.matraloom.score.Performance;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/** The words groups are spoken with. Words of a mora: common practice, from memory. */
class GroupWordsTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  private static Composition piece(String text, Lexicon lexicon) {
    Reading reading = ScoreReader.read("tala adi\n" + text, "words", lexicon);
    assertEquals("", reading.format());
    return reading.composition().orElseThrow();
  }

  /** Each sollu with how many matras it lasts. */
  private static String said(String text, Lexicon lexicon) {
    return Performance.of(piece(text, lexicon))
        .spoken()
        .map(GroupWordsTest::sign)
        .collect(Collectors.joining(" "));
  }

  private static String said(String text) {
    return said(text, LEXICON);
  }

  private static String sign(Spoken spoken) {
    Ratio matras = spoken.beats().times(4);
    return spoken.sollu().spelling() + (matras.equals(Ratio.ONE) ? "" : matras.toMixed());
  }

  @Test
  void inAnEndingAGroupIsSaidAsAMora() {
    String seven = "ta2 di2 gi na tom";
    assertEquals(seven + "3 " + seven + "3 " + seven, said("Song = 7(2)7(2)7\n"));
    String nine = "ta2 di2 gi2 na2 tom";
    assertEquals(nine + "2 " + nine + "2 " + nine, said("Song = 9(1)9(1)9\n"));
    assertEquals(
        "ta di gi na tom2 ta2 di gi na tom2 ta2 di2 gi na tom", said("Song = 5(1)6(1)7\n"));
  }

  @Test
  void elsewhereASolluIsAMatra() {
    String seven = "ta ka di mi ta ki ta";
    assertEquals(seven, said("Song = 7\n"));
    assertEquals(seven + " " + seven + " " + seven, said("Song = 7 7 7\n"));
    assertEquals(seven + "3 " + seven, said("Song = 7(2)7\n"));
  }

  @Test
  void theHeadSaysWhichWords() {
    String seven = "ta ka di mi ta ki ta";
    assertEquals(seven + "3 " + seven + "3 " + seven, said("words plain\nSong = 7(2)7(2)7\n"));
    assertEquals("ta2 di2 gi na tom", said("words mora\nSong = 7\n"));
  }

  @Test
  void wordsOfOnesOwnGoBeforeAll() {
    String own = "7 = ta di , gi ; tom\n";
    assertEquals("ta di2 gi3 tom", said(own + "Song = 7\n"));
    assertEquals(
        "ta di2 gi3 tom2 ta di2 gi3 tom2 ta di2 gi3 tom", said(own + "Song = 7(1)7(1)7\n"));
    assertEquals("ta ka di mi ta ki ta".replace(" ", "2 ") + "2", said(own + "Song = 7*2\n"));
    assertEquals("ta4 jem4", said("2 = ta jem\nSong = 2*4\n"));
  }

  /** {@code 7*3 7*2 7*1} is held shorter from line to line, with the same sollus. */
  @Test
  void sollusHeldForOneMatraAreStillTheSameSollus() {
    String seven = "ta ka di mi ta ki ta";
    for (String head : List.of("", "words mora\n", "7 = ta di , gi ; tom\n")) {
      assertEquals(seven, said(head + "Song = 7*1\n"), head);
      assertEquals(seven.replace(" ", "2 ") + "2 " + seven, said(head + "Song = 7*2 7*1\n"), head);
    }
  }

  @Test
  void theSumDoesNotDependOnTheWords() {
    for (String head : List.of("", "words plain\n", "words mora\n", "9 = ta ; ; ; ;\n")) {
      Composition piece = piece(head + "Song = 9(1)9(1)9\n", LEXICON);
      assertEquals(Ratio.of(29), Performance.of(piece).rounds().get(0).matras(), head);
      Ratio rest = Ratio.ZERO;
      rest = Performance.of(piece).spoken().map(Spoken::beats).reduce(rest, Ratio::plus);
      assertEquals(Ratio.of(29, 4), rest, head);
    }
  }

  @Test
  void aListOfOnesOwnMayHaveKarvaiInWords() {
    Lexicon mine = LEXICON.plus("7 = ta , di , gi na tom\n", "mine");
    assertEquals("ta2 di2 gi na tom", said("Song = 7\n", mine));
    assertEquals(LEXICON.words(7), mine.words(7), "ticks and lead-ins have a sollu a matra");
    LexiconException faulty =
        assertThrows(LexiconException.class, () -> LEXICON.plus("7 = ta , di tom\n", "mine"));
    assertTrue(faulty.getMessage().contains("must be 7 matras, given 4"), faulty.getMessage());
    assertThrows(LexiconException.class, () -> LEXICON.plus("3 = , ta ki\n", "mine"));
  }

  @Test
  void theBuiltInWordsFillTheirGroups() {
    for (int size = 6; size <= 9; size++) {
      assertTrue(LEXICON.moraChoices(size).size() >= 2, "a choice for " + size);
      for (GroupWords words : LEXICON.moraChoices(size)) {
        assertEquals(size, words.size(), words::written);
        assertEquals(5, words.sollus().size(), words::written);
      }
    }
  }
}
