package org.matraloom.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.spell.TalaFamily;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** A perform plan becomes rounds and silences without gaps. */
class PerformanceTest {

  private static final Avartana ADI =
      Avartana.of(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA), 1, FingerCustom.RESTART);

  /** Common practice: 80 matras twice at 4 and once at 5 a beat fill seven avartanas of adi. */
  @Test
  void roundsFollowEachOther() {
    Performance performance = perform(Ratio.ZERO, 80, say(2, 4, 1), say(1, 5, 1));
    assertEquals(
        List.of("0 +20", "20 +20", "40 +16"),
        performance.rounds().stream().map(PerformanceTest::line).toList());
    assertEquals(List.of(1, 2, 3), performance.rounds().stream().map(Span.Round::number).toList());
    assertEquals(Ratio.of(56), performance.endBeat());
    assertEquals(Ratio.of(56), performance.beats());
    performance.rounds().forEach(round -> assertEquals(Ratio.of(80), round.matras()));
    performance.rounds().forEach(round -> assertEquals(80, round.sollus()));
  }

  @Test
  void kalamMakesMatrasDenser() {
    Performance performance = perform(Ratio.ZERO, 96, say(1, 4, 1), say(1, 4, 2), say(1, 4, 3));
    assertEquals(
        List.of("0 +24", "24 +12", "36 +6"),
        performance.rounds().stream().map(PerformanceTest::line).toList());
    assertEquals(
        List.of(4, 8, 16), performance.rounds().stream().map(Span::matrasPerBeat).toList());
    performance.rounds().forEach(round -> assertEquals(Ratio.of(96), round.matras()));
  }

  @Test
  void restsTakeBeatsOrMatras() {
    Performance performance =
        perform(
            Ratio.ZERO,
            8,
            say(1, 4, 1),
            new Step.RestBeats(new Ratio(3, 2)),
            new Step.RestMatras(16, 5),
            say(1, 5, 1));
    assertEquals(
        List.of("0 +2", "2 +3/2", "7/2 +16/5", "67/10 +8/5"),
        performance.spans().stream().map(PerformanceTest::line).toList());
    assertEquals(4, performance.spans().get(1).matrasPerBeat());
    assertEquals(5, performance.spans().get(2).matrasPerBeat());
    assertEquals(Ratio.of(16), performance.spans().get(2).matras());
    assertEquals(2, performance.rounds().size());
  }

  @ParameterizedTest
  @CsvSource({
    // matras at 4 a beat, place waited for, silence in quarter beats
    "8, 0, 24",
    "32, 0, 0",
    "33, 0, 31",
    "8, 8, 0",
    "8, 9, 1",
    "8, 7, 31",
    "40, -1, 23"
  })
  void untilWaitsForAPlaceAndNotIfItIsThere(int matras, int placeQuarters, int silenceQuarters) {
    Performance performance =
        perform(Ratio.ZERO, matras, say(1, 4, 1), new Step.Until(new Ratio(placeQuarters, 4)));
    Span pause = performance.spans().get(1);
    assertEquals(new Ratio(silenceQuarters, 4), pause.beats());
    assertEquals(ADI.placeOf(new Ratio(placeQuarters, 4)), ADI.placeOf(performance.endBeat()));
  }

  @Test
  void aStartBeforeSamamIsNegative() {
    Performance performance = perform(new Ratio(-1, 4), 33, say(1, 4, 1));
    assertEquals(new Ratio(-1, 4), performance.rounds().get(0).startBeat());
    assertEquals(Ratio.of(8), performance.endBeat());
    assertEquals(new Ratio(33, 4), performance.beats());
  }

  @Test
  void spansHaveNoGaps() {
    Performance performance =
        perform(
            new Ratio(3, 2),
            23,
            say(3, 4, 1),
            new Step.Until(Ratio.of(4)),
            say(2, 5, 2),
            new Step.RestMatras(7, 9),
            say(1, 7, 3),
            new Step.RestBeats(Ratio.ONE));
    Ratio now = new Ratio(3, 2);
    for (Span span : performance.spans()) {
      assertEquals(now, span.startBeat());
      assertTrue(span.beats().signum() >= 0);
      now = span.endBeat();
    }
    assertEquals(now, performance.endBeat());
    assertEquals(9, performance.spans().size());
    assertEquals(6, performance.rounds().size());
  }

  @Test
  void anInnerNadaiKeepsItsBeatsWhenTheRoundChanges() {
    Element inner = new Element.InnerNadai(5, Sequence.of(matras(10)));
    Map<String, Sequence> phrases = Map.of("Song", Sequence.of(matras(20), inner));
    Performance performance =
        Performance.of(composition(Ratio.ZERO, phrases, List.of(say(1, 4, 1), say(1, 5, 1))));
    assertEquals(
        List.of("0 +7", "7 +6"), performance.rounds().stream().map(PerformanceTest::line).toList());
  }

  @Test
  void theTempoChangesNoBeat() {
    Composition slow =
        composition(Ratio.ZERO, Map.of("Song", Sequence.of(matras(80))), List.of(say(2, 4, 1)));
    assertEquals(Performance.of(slow).spans(), Performance.of(slow.at(Tempo.of(200))).spans());
    assertEquals(Tempo.of(200), slow.at(Tempo.of(200)).tempo());
  }

  @Test
  void aPerformanceTooLongToCountThrows() {
    Element long1 = new Element.Repeat(Sequence.of(matras(1)), Integer.MAX_VALUE);
    Element long2 = new Element.Repeat(Sequence.of(long1), Integer.MAX_VALUE);
    Composition endless =
        composition(
            Ratio.ZERO, Map.of("Song", Sequence.of(long2)), Collections.nCopies(16, say(1, 1, 1)));
    assertThrows(ArithmeticException.class, () -> Performance.of(endless));
  }

  private static Performance perform(Ratio start, int matras, Step... plan) {
    return Performance.of(
        composition(start, Map.of("Song", Sequence.of(matras(matras))), List.of(plan)));
  }

  private static Composition composition(
      Ratio start, Map<String, Sequence> phrases, List<Step> plan) {
    return new Composition("", ADI, Tempo.of(60), start, Ratio.ZERO, phrases, plan);
  }

  private static Step say(int times, int nadai, int kalam) {
    return new Step.Say("Song", times, nadai, kalam);
  }

  private static Element matras(int count) {
    return new Element.Word("ta", Collections.nCopies(count, new Sollu("ta", "ta")));
  }

  private static String line(Span span) {
    return span.startBeat() + " +" + span.beats();
  }
}
