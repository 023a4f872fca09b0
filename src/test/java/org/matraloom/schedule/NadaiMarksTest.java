package org.matraloom.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Jati;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.Step;
import org.matraloom.spell.TalaFamily;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** A change of nadai is marked once, where the first sound or silence in it begins. */
class NadaiMarksTest {

  private static final Sollu TA = new Sollu("ta", "ta");
  private static final Element FOUR = new Element.Word("tatatata", List.of(TA, TA, TA, TA));
  private static final Element IN_FIVE = new Element.InnerNadai(5, Sequence.of(FOUR));

  @Test
  void aRestInAnotherNadaiIsMarkedBeforeItsSilence() {
    List<Event> events =
        marks(Ratio.ZERO, Sequence.of(FOUR), say(4), new Step.RestMatras(5, 5), say(5));
    assertEquals(
        List.of("RoundStart 0", "NadaiChange 1", "Silence 1", "RoundStart 2"), lines(events));
  }

  @Test
  void aPassageThatEndsWithItsRoundDoesNotChangeBackAndForth() {
    List<Event> events = marks(Ratio.ZERO, Sequence.of(FOUR, IN_FIVE), say(4), say(5));
    assertEquals(List.of("RoundStart 0", "NadaiChange 1", "RoundStart 9/5"), lines(events));
  }

  @Test
  void aPassageThatEndsWithThePieceChangesNothingMore() {
    List<Event> events = marks(Ratio.ZERO, Sequence.of(FOUR, IN_FIVE), say(4));
    assertEquals(List.of("RoundStart 0", "NadaiChange 1"), lines(events));
  }

  @Test
  void twoPassagesInARowChangeOnceEach() {
    Element inSeven = new Element.InnerNadai(7, Sequence.of(FOUR));
    List<Event> events = marks(Ratio.ZERO, Sequence.of(FOUR, IN_FIVE, inSeven, FOUR), say(4));
    assertEquals(
        List.of(
            new Event.NadaiChange(Ratio.of(1), 4, 5),
            new Event.NadaiChange(new Ratio(9, 5), 5, 7),
            new Event.NadaiChange(new Ratio(83, 35), 7, 4)),
        events.subList(1, events.size()));
  }

  @Test
  void theFirstBeatOfTheRoundsNadaiIsKnownEvenIfAPassageOpensIt() {
    List<Event> events = marks(Ratio.ZERO, Sequence.of(IN_FIVE, FOUR), say(4));
    assertEquals(
        List.of(
            new Event.NadaiChange(Ratio.ZERO, 4, 5), new Event.NadaiChange(new Ratio(4, 5), 5, 4)),
        events.subList(1, events.size()));
  }

  @Test
  void aStartMoreThanACycleBeforeSamamIsStillCountedIn() {
    Timeline timeline = timeline(Ratio.of(-9), Sequence.of(FOUR), say(4));
    assertEquals(Ratio.of(-16), timeline.originBeat());
    assertTrue(timeline.iterator().next() instanceof Event.CountIn);
  }

  private static Step say(int nadai) {
    return new Step.Say("Song", 1, nadai, 1);
  }

  private static List<Event> marks(Ratio start, Sequence song, Step... plan) {
    List<Event> marks = new ArrayList<>();
    for (Event event : timeline(start, song, plan)) {
      if (event instanceof Event.RoundStart
          || event instanceof Event.NadaiChange
          || event instanceof Event.Silence) {
        marks.add(event);
      }
    }
    return marks;
  }

  private static Timeline timeline(Ratio start, Sequence song, Step... plan) {
    Avartana adi = Avartana.of(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA), 1, FingerCustom.RESTART);
    Map<String, Sequence> phrases = Map.of("Song", song);
    Composition composition =
        new Composition("", adi, Tempo.of(60), start, Ratio.ZERO, phrases, List.of(plan));
    return ScoreTimeline.of(Performance.of(composition), 1);
  }

  private static List<String> lines(List<Event> events) {
    return events.stream()
        .map(event -> event.getClass().getSimpleName() + " " + event.beat())
        .toList();
  }
}
