package org.matraloom.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
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

class LeadInTimelineTest {

  private static final Sollu TA = new Sollu("ta", "ta");
  private static final Avartana ADI =
      Avartana.of(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA), 1, FingerCustom.RESTART);

  @Test
  void theWordsStandBetweenSamamAndTheStart() {
    Timeline plain = ScoreTimeline.of(startingOn(Ratio.of(3, 2)), 1);
    LeadInTimeline led = new LeadInTimeline(plain, Ratio.ZERO, 4, List.of(TA, TA, TA, TA, TA, TA));
    List<Event> events = new ArrayList<>();
    led.forEach(events::add);
    Ratio before = led.originBeat();
    for (Event event : events) {
      assertTrue(event.beat().compareTo(before) >= 0, "events come in order");
      before = event.beat();
    }
    List<Event.SolluSaid> words =
        events.stream()
            .filter(Event.SolluSaid.class::isInstance)
            .map(Event.SolluSaid.class::cast)
            .filter(said -> said.round() == 0)
            .toList();
    assertEquals(6, words.size());
    assertEquals(Ratio.of(5, 4), words.get(5).beat());
    assertEquals(Stress.PHRASE, words.get(4).stress());
    assertEquals(Stress.NONE, words.get(5).stress());
    List<Event> unled = new ArrayList<>();
    plain.forEach(unled::add);
    events.removeAll(words);
    assertEquals(unled, events);
    assertEquals(plain.endBeat(), led.endBeat());
    assertEquals(plain.performance(), led.performance());
  }

  @Test
  void wordsThatHaveNoRoomAreRefused() {
    Timeline plain = ScoreTimeline.of(startingOn(Ratio.ONE), 1);
    List<Sollu> five = List.of(TA, TA, TA, TA, TA);
    assertThrows(
        IllegalArgumentException.class, () -> new LeadInTimeline(plain, Ratio.ZERO, 4, five));
    assertThrows(
        IllegalArgumentException.class, () -> new LeadInTimeline(plain, Ratio.of(-9), 4, five));
  }

  private static Performance startingOn(Ratio start) {
    Element word = new Element.Word("takadimi", List.of(TA, TA, TA, TA));
    return Performance.of(
        new Composition(
            "",
            ADI,
            Tempo.of(60),
            start,
            Ratio.ZERO,
            Map.of("Song", Sequence.of(word)),
            List.of(new Step.Say("Song", 2, 4, 1))));
  }
}
