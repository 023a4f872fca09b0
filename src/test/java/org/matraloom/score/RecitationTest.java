package org.matraloom.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;
import org.matraloom.time.Ratio;

/** What is said, where and for how long. */
class RecitationTest {

  @Test
  void aSolluLastsOneMatraAndAKarvaiRingsOn() {
    List<String> said = said(4, 1, word("tom"), new Element.Karvai(1), new Element.Karvai(2));
    assertEquals(List.of("0 tom 1/4", "1/4 ring 1/4", "1/2 ring 1/2"), said);
  }

  @Test
  void aDotIsSilent() {
    List<String> said = said(5, 1, word("ta"), new Element.Silence(), word("ka"));
    assertEquals(List.of("0 ta 1/5", "1/5 quiet 1/5", "2/5 ka 1/5"), said);
  }

  @Test
  void aGroupHoldsEachSolluAndRingsAtItsEnd() {
    Element group = new Element.Group(2, 6, 3, List.of(sollu("ta"), sollu("ka")));
    assertEquals(
        List.of(
            "0 group of 2", "0 ta 1/4", "1/4 ring 5/4", "3/2 ka 1/4", "7/4 ring 5/4", "3 ring 3/4"),
        said(4, 1, group));
  }

  @Test
  void fasterPassagesAreTwiceOrFourTimesAsDense() {
    Element twice = new Element.Faster(2, Sequence.of(word("ta", "ka"), new Element.Karvai(2)));
    Element fourTimes = new Element.Faster(4, Sequence.of(word("di"), new Element.Silence()));
    assertEquals(
        List.of("0 ta 1/8", "1/8 ka 1/8", "1/4 ring 1/4", "1/2 di 1/16", "9/16 quiet 1/16"),
        said(4, 1, twice, fourTimes));
  }

  @Test
  void speedsMultiplyWhenNested() {
    Element inner = new Element.Faster(2, Sequence.of(word("ta")));
    Element outer = new Element.Faster(2, Sequence.of(inner, word("ka")));
    assertEquals(List.of("0 ta 1/16", "1/16 ka 1/8"), said(4, 1, outer));
  }

  @Test
  void anInnerNadaiReplacesTheNadaiOfTheRoundAndKeepsItsSpeed() {
    Element inner = new Element.InnerNadai(5, Sequence.of(word("ta")));
    assertEquals(
        List.of("0 now 5 a beat", "0 ta 1/5", "1/5 now 4 a beat", "1/5 ka 1/4"),
        said(4, 1, inner, word("ka")));
    assertEquals(
        List.of("0 now 10 a beat", "0 ta 1/10", "1/10 now 8 a beat", "1/10 ka 1/8"),
        said(4, 2, inner, word("ka")));
    Element faster = new Element.Faster(2, Sequence.of(inner, word("ka")));
    assertEquals(
        List.of("0 now 5 a beat", "0 ta 1/10", "1/10 now 4 a beat", "1/10 ka 1/8"),
        said(4, 1, faster));
    Element nested = new Element.InnerNadai(7, Sequence.of(inner, word("ka")));
    assertEquals(
        List.of(
            "0 now 7 a beat",
            "0 now 5 a beat",
            "0 ta 1/5",
            "1/5 now 7 a beat",
            "1/5 ka 1/7",
            "12/35 now 4 a beat"),
        said(4, 1, nested));
  }

  @Test
  void anInnerNadaiLikeTheRoundChangesNothing() {
    Element inner = new Element.InnerNadai(5, Sequence.of(word("ta")));
    assertEquals(List.of("0 ta 1/5"), said(5, 1, inner));
  }

  @Test
  void aRepeatIsSaidThatManyTimesAndEachRepeatOfARepeatAfresh() {
    Element inner = new Element.Repeat(Sequence.of(word("ta")), 2);
    Element outer = new Element.Repeat(Sequence.of(inner, word("ka")), 3);
    assertEquals(
        List.of(
            "0 ta 1", "1 ta 1", "2 ka 1", "3 ta 1", "4 ta 1", "5 ka 1", "6 ta 1", "7 ta 1",
            "8 ka 1"),
        said(1, 1, outer));
  }

  /** First, second and third speed are 1, 2 and 4 (eviolinguru.com, kala and tempo). */
  @Test
  void kalamDoublesAndDoublesAgain() {
    assertEquals(List.of("0 ta 1/4", "1/4 ka 1/4"), said(4, 1, word("ta", "ka")));
    assertEquals(List.of("0 ta 1/8", "1/8 ka 1/8"), said(4, 2, word("ta", "ka")));
    assertEquals(List.of("0 ta 1/16", "1/16 ka 1/16"), said(4, 3, word("ta", "ka")));
  }

  @Test
  void referencesAnnounceThePhraseAndItsDepthAndTellWhenItHasBeenSaid() {
    Map<String, Sequence> phrases =
        Map.of(
            "Song", Sequence.of(new Element.Reference("Line"), word("tom")),
            "Line", Sequence.of(new Element.Reference("Drop"), word("di")),
            "Drop", Sequence.of(word("ta")));
    assertEquals(
        List.of(
            "0 Line 1",
            "0 Drop 2",
            "0 ta 1/4",
            "1/4 Drop left 2",
            "1/4 di 1/4",
            "1/2 Line left 1",
            "1/2 tom 1/4"),
        said(Recitation.of("Song", phrases, 4, 1)));
  }

  @Test
  void aBarTakesNoTimeAndKeepsItsPlace() {
    Element.Bar bar = new Element.Bar(true, new Place(3, 14));
    Recitation recitation =
        Recitation.of("A", Map.of("A", Sequence.of(word("ta"), bar, word("ka"))), 4, 1);
    recitation.next();
    assertEquals(new Utterance.Claim(new Ratio(1, 4), bar), recitation.next());
    assertEquals(new Ratio(1, 4), recitation.next().atBeat());
  }

  @Test
  void anEmptyPhraseSaysNothing() {
    Element hollow = new Element.Repeat(new Sequence(List.of()), 5);
    Recitation recitation = Recitation.of("A", Map.of("A", Sequence.of(hollow)), 4, 1);
    assertFalse(recitation.hasNext());
    assertThrows(NoSuchElementException.class, recitation::next);
  }

  /** Every utterance begins where the one before it ended. */
  @Test
  void positionsAreContiguousInRandomPhrases() {
    int utterances = 0;
    for (int seed = 0; seed < 1_000; seed++) {
      Map<String, Sequence> phrases = new RandomPhrases(seed).phrases();
      for (String name : phrases.keySet()) {
        Ratio end = Ratio.ZERO;
        for (Utterance utterance : all(Recitation.of(name, phrases, 3 + seed % 7, 1 + seed % 3))) {
          assertEquals(end, utterance.atBeat(), name + " of seed " + seed);
          end = end.plus(lengthOf(utterance));
          utterances++;
        }
      }
    }
    assertTrue(utterances > 50_000, "utterances were seen: " + utterances);
  }

  @Test
  void sayingTwiceGivesTheSame() {
    Map<String, Sequence> phrases = new RandomPhrases(12).phrases();
    String last = List.copyOf(phrases.keySet()).get(phrases.size() - 1);
    List<Utterance> once = all(Recitation.of(last, phrases, 5, 1));
    assertFalse(once.isEmpty());
    assertEquals(once, all(Recitation.of(last, phrases, 5, 1)));
  }

  static List<Utterance> all(Recitation recitation) {
    List<Utterance> utterances = new ArrayList<>();
    recitation.forEachRemaining(utterances::add);
    return utterances;
  }

  static Ratio lengthOf(Utterance utterance) {
    if (utterance instanceof Utterance.Sound sound) {
      return sound.beats();
    } else if (utterance instanceof Utterance.Ring ring) {
      return ring.beats();
    } else if (utterance instanceof Utterance.Quiet quiet) {
      return quiet.beats();
    }
    return Ratio.ZERO;
  }

  private static List<String> said(int nadai, int kalam, Element... elements) {
    return said(Recitation.of("A", Map.of("A", Sequence.of(elements)), nadai, kalam));
  }

  private static List<String> said(Recitation recitation) {
    return all(recitation).stream().map(RecitationTest::line).toList();
  }

  private static String line(Utterance utterance) {
    if (utterance instanceof Utterance.Sound sound) {
      return sound.atBeat() + " " + sound.sollu().spelling() + " " + sound.beats();
    } else if (utterance instanceof Utterance.Ring ring) {
      return ring.atBeat() + " ring " + ring.beats();
    } else if (utterance instanceof Utterance.Quiet quiet) {
      return quiet.atBeat() + " quiet " + quiet.beats();
    } else if (utterance instanceof Utterance.Entry entry) {
      return entry.atBeat() + " " + entry.name() + " " + entry.depth();
    } else if (utterance instanceof Utterance.Leave leave) {
      return leave.atBeat() + " " + leave.name() + " left " + leave.depth();
    } else if (utterance instanceof Utterance.GroupHead head) {
      return head.atBeat() + " group of " + head.size();
    } else if (utterance instanceof Utterance.Density density) {
      return density.atBeat() + " now " + density.matrasPerBeat() + " a beat";
    }
    return utterance.atBeat() + " bar";
  }

  private static Sollu sollu(String spelling) {
    return new Sollu(spelling, spelling);
  }

  private static Element word(String... sollus) {
    return new Element.Word(
        String.join("", sollus), List.of(sollus).stream().map(RecitationTest::sollu).toList());
  }
}
