package org.matraloom.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.matraloom.time.Ratio;

/** The words of groups, and how a piece closes. */
class WordingTest {

  private static final Lexicon LEXICON = Lexicon.standard();

  private static Element.Group standing(Wording wording, boolean ends) {
    return wording.group(7, 1, 0, LEXICON).standing(ends);
  }

  @Test
  void wordsAreWrittenWithTheirKarvai() {
    GroupWords mora = LEXICON.moraWords(7);
    assertEquals("ta , di , gi na tom", mora.written(), "common practice");
    assertEquals(7, mora.size());
    assertFalse(mora.isPlain());
    GroupWords plain = GroupWords.plain(LEXICON.words(7));
    assertTrue(plain.isPlain());
    assertEquals(7, plain.sollus().size());
    Sollu ta = mora.sollus().get(0);
    assertEquals("ta ; ,", new GroupWords(List.of(ta), List.of(4)).written());
    assertEquals("ta ; ;", new GroupWords(List.of(ta), List.of(5)).written());
    assertThrows(IllegalArgumentException.class, () -> new GroupWords(List.of(ta), List.of(1, 1)));
  }

  @Test
  void usualWordsAreThoseOfAMoraInAnEndingOnly() {
    assertEquals(LEXICON.moraWords(7), standing(Wording.USUAL, true).words());
    assertEquals(LEXICON.groupWords(7), standing(Wording.USUAL, false).words());
    Wording plain = new Wording(Wording.Kind.PLAIN, Map.of(), Map.of());
    Wording mora = new Wording(Wording.Kind.MORA, Map.of(), Map.of());
    for (boolean ends : new boolean[] {false, true}) {
      assertEquals(GroupWords.plain(LEXICON.words(7)), standing(plain, ends).words());
      assertEquals(LEXICON.moraWords(7), standing(mora, ends).words());
    }
  }

  @Test
  void wordsOfOnesOwnGoBeforeOthersButAreNotHeldWithKarvaiInside() {
    GroupWords own = LEXICON.moraWords(7);
    Wording wording = new Wording(Wording.Kind.PLAIN, Map.of(7, own), Map.of());
    assertEquals(own, wording.group(7, 1, 2, LEXICON).words());
    assertEquals(2, wording.group(7, 1, 2, LEXICON).karvai());
    assertTrue(wording.group(7, 3, 0, LEXICON).words().isPlain());
    assertEquals(3, wording.group(7, 3, 0, LEXICON).hold());
    assertEquals(
        GroupWords.plain(LEXICON.words(5)), wording.group(5, 1, 0, LEXICON).words(), "not given");
  }

  /** Three groups with karvai after the first two are an ending; two, or none between, are not. */
  @Test
  void endingsAreThreeGroupsWithKarvaiBetween() {
    Element.Group rings = Wording.USUAL.group(7, 1, 2, LEXICON);
    Element.Group last = Wording.USUAL.group(7, 1, 0, LEXICON);
    assertEquals(5, sollus(Sequence.of(rings, rings, last), 2));
    assertEquals(7, sollus(Sequence.of(rings, last), 1));
    assertEquals(7, sollus(Sequence.of(last, last, last), 2));
    assertEquals(7, sollus(Sequence.of(rings, last, last), 2));
  }

  /** What takes no time does not come between the statements: a kept plan says the same words. */
  @Test
  void barsAndBreathMarksChangeNoWords() {
    Element.Group rings = Wording.USUAL.group(7, 1, 2, LEXICON);
    Element.Group last = Wording.USUAL.group(7, 1, 0, LEXICON);
    for (Element mark :
        List.of(new Element.BreathWish(true), new Element.BreathWish(false), bar())) {
      Sequence marked = Sequence.of(rings, mark, rings, mark, last);
      for (int index : new int[] {0, 2, 4}) {
        assertEquals(5, sollus(marked, index), mark + " " + index);
      }
    }
  }

  private static Element bar() {
    return new Element.Bar(true, new Place(1, 1));
  }

  private static int sollus(Sequence sequence, int index) {
    return ((Element.Group) sequence.elements().get(index)).sollus().size();
  }

  @Test
  void aStrokeRingsForABeatOrAsLongAsItSays() {
    Sollu tom = LEXICON.moraWords(7).sollus().get(4);
    assertEquals(Ratio.ONE, new Closing.Stroke(tom, 0).beats(5));
    assertEquals(Ratio.of(4, 5), new Closing.Stroke(tom, 3).beats(5));
    assertEquals(1, Closing.usualAvartanas(Optional.of(new Closing.Stroke(tom, 0))));
    assertEquals(0, Closing.usualAvartanas(Optional.empty()));
    assertEquals(Closing.MOST, new Closing(Optional.empty(), Closing.MOST).avartanas());
    for (int avartanas : new int[] {-1, Closing.MOST + 1}) {
      assertThrows(IllegalArgumentException.class, () -> new Closing(Optional.empty(), avartanas));
    }
  }

  @Test
  void nadaisAreNamed() {
    assertEquals("khanda nadai (5)", Nadai.inWords(5));
    assertEquals("chatusra nadai (4)", Nadai.inWords(4));
  }
}
