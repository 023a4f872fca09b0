package org.matraloom.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.matraloom.time.Ratio;

/**
 * The length of a phrase agrees with what is said when it is recited, and costs nothing to know.
 */
class LengthTest {

  private static final Sollu TA = new Sollu("ta", "ta");

  /** Whole ticks: 2520 is divided by 1 to 9, and the power of 2 is for nested double speeds. */
  private static final long TICKS_PER_BEAT = 2_520L << 24;

  @Test
  void isTheSumOfWhatIsSaid() {
    int longer = 0;
    for (int seed = 0; seed < 1_000; seed++) {
      Map<String, Sequence> phrases = new RandomPhrases(seed).phrases();
      int nadai = 3 + seed % 7;
      int kalam = 1 + seed % 3;
      for (Map.Entry<String, Sequence> phrase : phrases.entrySet()) {
        Length length = Length.of(phrase.getValue(), phrases);
        Ratio sum = Ratio.ZERO;
        long sollus = 0;
        List<Utterance> said =
            RecitationTest.all(Recitation.of(phrase.getKey(), phrases, nadai, kalam));
        for (Utterance utterance : said) {
          sum = sum.plus(RecitationTest.lengthOf(utterance));
          sollus += utterance instanceof Utterance.Sound ? 1 : 0;
        }
        String which = phrase.getKey() + " of seed " + seed;
        assertEquals(sum, length.beats(nadai, kalam), which);
        assertEquals(sollus, length.sollus(), which);
        assertEquals(sum.signum() == 0, length.isNothing(), which);
        assertTrue(length.steps() >= said.stream().filter(LengthTest::isElement).count(), which);
        longer += sum.compareTo(Ratio.of(8)) > 0 ? 1 : 0;
      }
    }
    assertTrue(longer > 500, "long phrases were met: " + longer);
  }

  private static boolean isElement(Utterance utterance) {
    return utterance instanceof Utterance.Sound
        || utterance instanceof Utterance.Quiet
        || utterance instanceof Utterance.Entry
        || utterance instanceof Utterance.Claim;
  }

  /** The same lengths by another route: whole ticks, counted by walking the tree. */
  @Test
  void agreesWithACountInWholeTicks() {
    for (int seed = 5_000; seed < 7_000; seed++) {
      Map<String, Sequence> phrases = new RandomPhrases(seed).phrases();
      int nadai = 3 + seed % 7;
      int kalam = 1 + seed % 3;
      for (Sequence phrase : phrases.values()) {
        long ticks = ticks(phrase, phrases, TICKS_PER_BEAT >> (kalam - 1), nadai);
        assertEquals(
            new Ratio(ticks, TICKS_PER_BEAT), Length.of(phrase, phrases).beats(nadai, kalam));
      }
    }
  }

  private static long ticks(
      Sequence sequence, Map<String, Sequence> phrases, long ticksPerBeat, int nadai) {
    long sum = 0;
    for (Element element : sequence.elements()) {
      assertEquals(0, ticksPerBeat % nadai, "the ticks are fine enough");
      long matra = ticksPerBeat / nadai;
      if (element instanceof Element.Word word) {
        sum += matra * word.sollus().size();
      } else if (element instanceof Element.Karvai karvai) {
        sum += matra * karvai.matras();
      } else if (element instanceof Element.Silence) {
        sum += matra;
      } else if (element instanceof Element.Group group) {
        sum += matra * (group.size() * group.hold() + group.karvai());
      } else if (element instanceof Element.Faster faster) {
        sum += ticks(faster.body(), phrases, ticksPerBeat / faster.factor(), nadai);
      } else if (element instanceof Element.Repeat repeat) {
        sum += repeat.times() * ticks(repeat.body(), phrases, ticksPerBeat, nadai);
      } else if (element instanceof Element.InnerNadai inner) {
        sum += ticks(inner.body(), phrases, ticksPerBeat, inner.nadai());
      } else if (element instanceof Element.Reference reference) {
        sum += ticks(phrases.get(reference.name()), phrases, ticksPerBeat, nadai);
      }
    }
    return sum;
  }

  @Test
  void concatenationAdds() {
    for (int seed = 0; seed < 500; seed++) {
      Map<String, Sequence> phrases = new RandomPhrases(seed).phrases();
      Ratio sum = Ratio.ZERO;
      Element[] all = phrases.keySet().stream().map(Element.Reference::new).toArray(Element[]::new);
      for (Sequence phrase : phrases.values()) {
        sum = sum.plus(Length.of(phrase, phrases).beats(5, 1));
      }
      assertEquals(sum, Length.of(Sequence.of(all), phrases).beats(5, 1));
    }
  }

  @Test
  void eachKalamHalvesTheOneBefore() {
    for (int seed = 0; seed < 500; seed++) {
      Map<String, Sequence> phrases = new RandomPhrases(seed).phrases();
      for (Sequence phrase : phrases.values()) {
        Length length = Length.of(phrase, phrases);
        assertEquals(length.beats(7, 1), length.beats(7, 2).times(2));
        assertEquals(length.beats(7, 2), length.beats(7, 3).times(2));
      }
    }
  }

  /** Kanakku shorthand as quoted on rasikas.org, "Structuring a Korvai in the thani", p=380684. */
  @Test
  void karvaisCountAndHeldSollusCountEachMatra() {
    Sequence nines = Sequence.of(group(9, 1, 1), group(9, 1, 1), group(9, 1, 0));
    assertEquals(Ratio.of(29), Length.of(nines, Map.of()).matras());
    assertEquals(27, Length.of(nines, Map.of()).sollus());
    Sequence reducing = Sequence.of(group(5, 6, 0), group(5, 4, 0), group(5, 3, 0), group(5, 2, 0));
    assertEquals(Ratio.of(75), Length.of(reducing, Map.of()).matras());
    assertEquals(20, Length.of(reducing, Map.of()).sollus());
  }

  @Test
  void innerNadaiIsKeptApartFromTheRoundsMatras() {
    Element inner = new Element.InnerNadai(5, Sequence.of(group(5, 2, 0)));
    Length length = Length.of(Sequence.of(group(4, 1, 0), inner), Map.of());
    assertEquals(Ratio.of(4), length.matras());
    assertEquals(Ratio.of(2), length.innerBeats());
    assertEquals(Ratio.of(3), length.beats(4, 1));
    assertEquals(new Ratio(14, 5), length.beats(5, 1));
    assertEquals(new Ratio(3, 2), length.beats(4, 2));
    Length faster = Length.of(Sequence.of(new Element.Faster(4, Sequence.of(inner))), Map.of());
    assertEquals(new Ratio(1, 2), faster.innerBeats());
  }

  @Test
  void aBarIsAStepWithoutTime() {
    Length length = Length.of(Sequence.of(new Element.Bar(false, new Place(1, 1))), Map.of());
    assertTrue(length.isNothing());
    assertEquals(1, length.steps());
    assertFalse(Length.of(Sequence.of(new Element.Silence()), Map.of()).isNothing());
  }

  /** Forty phrases, each saying the one before twice: known at once, though 2^40 matras long. */
  @Test
  void aTowerOfReferencesIsMeasuredWithoutSayingIt() {
    Map<String, Sequence> phrases = new LinkedHashMap<>();
    phrases.put("P0", Sequence.of(new Element.Word("ta", List.of(TA))));
    for (int level = 1; level <= 40; level++) {
      Element below = new Element.Reference("P" + (level - 1));
      phrases.put("P" + level, Sequence.of(below, below));
    }
    Length length = Length.of(phrases.get("P40"), phrases);
    assertEquals(Ratio.of(1L << 40), length.matras());
    assertEquals(1L << 40, length.sollus());
    assertTrue(length.steps() > 1L << 40);
  }

  @Test
  void whatIsTooLongToCountThrows() {
    Sequence sequence = Sequence.of(new Element.Word("ta", List.of(TA)));
    for (int level = 0; level < 3; level++) {
      sequence = Sequence.of(new Element.Repeat(sequence, Integer.MAX_VALUE));
    }
    Sequence tooLong = sequence;
    assertThrows(ArithmeticException.class, () -> Length.of(tooLong, Map.of()));
  }

  private static Element group(int size, int hold, int karvai) {
    return new Element.Group(size, hold, karvai, Collections.nCopies(size, TA));
  }
}
