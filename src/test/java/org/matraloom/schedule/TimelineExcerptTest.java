package org.matraloom.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Sollu;
import org.matraloom.score.Span;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/** An excerpt is the whole from a place on, with the hand in its places before it. */
class TimelineExcerptTest {

  private final List<Composition> compositions = RandomCompositions.some(60);

  @Test
  void fromThePlaceOnNothingIsMissingAndNothingIsAdded() {
    int compared = 0;
    for (Composition composition : compositions) {
      Timeline whole = ScoreTimeline.of(Performance.of(composition), 0);
      for (Span.Round round : whole.performance().rounds()) {
        TimelineExcerpt excerpt = TimelineExcerpt.countedIn(whole, round.startBeat(), 1);
        List<Event> expected = from(whole, round.startBeat());
        assertEquals(expected, from(excerpt, round.startBeat()));
        compared += expected.size();
      }
    }
    assertTrue(compared > 10_000, "events were compared: " + compared);
  }

  @Test
  void beforeThePlaceTheHandGivesEveryBeatAndTheMouthIsSilent() {
    int beats = 0;
    for (Composition composition : compositions) {
      Timeline whole = ScoreTimeline.of(Performance.of(composition), 0);
      Avartana avartana = composition.avartana();
      for (Span.Round round : whole.performance().rounds()) {
        TimelineExcerpt excerpt = TimelineExcerpt.countedIn(whole, round.startBeat(), 2);
        long expected = excerpt.originBeat().floor();
        assertTrue(avartana.isSamam(expected));
        for (Event event : excerpt) {
          if (event.beat().compareTo(round.startBeat()) >= 0) {
            break;
          }
          if (event instanceof Event.HandBeat hand) {
            assertEquals(Ratio.of(expected), hand.beat());
            assertEquals(avartana.kriyaAt(expected), hand.kriya());
            assertEquals(0, hand.round());
            expected++;
            beats++;
          } else {
            assertTrue(event instanceof Event.Tick tick && tick.round() == 0, event.toString());
          }
        }
        assertEquals(round.startBeat().ceil(), expected);
      }
    }
    assertTrue(beats > 1_000, "beats before places were met: " + beats);
  }

  @Test
  void aCountInBeforeTheWholeIsTheOneOfTheScore() {
    for (Composition composition : compositions) {
      Performance performance = Performance.of(composition);
      List<Event> counted = new ArrayList<>();
      ScoreTimeline.of(performance, 2).forEach(counted::add);
      counted.removeIf(Event.CountIn.class::isInstance);
      Timeline whole = ScoreTimeline.of(performance, 0);
      List<Event> excerpt = new ArrayList<>();
      TimelineExcerpt.countedIn(whole, performance.startBeat(), 2).forEach(excerpt::add);
      assertEquals(counted, excerpt);
    }
  }

  @Test
  void wordsThatLeadInToThePieceAreKeptAndThoseBeforeALaterPlaceAreNot() {
    Timeline score = ScoreTimeline.of(Performance.of(compositions.get(0)), 2);
    Ratio start = score.performance().startBeat();
    Event word =
        new Event.SolluSaid(
            Spoken.aside(start.minus(Ratio.ONE), new Sollu("ta", "ta"), 1, 0), Stress.NONE);
    Timeline led =
        new Timeline() {
          @Override
          public Performance performance() {
            return score.performance();
          }

          @Override
          public Ratio originBeat() {
            return score.originBeat();
          }

          @Override
          public Ratio endBeat() {
            return score.endBeat();
          }

          @Override
          public Iterator<Event> iterator() {
            return new MergedEvents(List.of(score.iterator(), List.of(word).iterator()));
          }
        };
    List<Event> fromTheStart = new ArrayList<>();
    TimelineExcerpt.countedIn(led, start, 2).forEach(fromTheStart::add);
    assertTrue(fromTheStart.contains(word));
    List<Event> later = new ArrayList<>();
    TimelineExcerpt.countedIn(led, start.plus(Ratio.ONE), 2).forEach(later::add);
    assertTrue(!later.isEmpty() && !later.contains(word));
  }

  @Test
  void theOriginIsAWholeBeatThatIsNotAfterTheStart() {
    Timeline whole = ScoreTimeline.of(Performance.of(compositions.get(0)), 0);
    assertThrows(
        IllegalArgumentException.class,
        () -> TimelineExcerpt.of(whole, Ratio.of(1, 2), Ratio.of(4)));
    assertThrows(
        IllegalArgumentException.class, () -> TimelineExcerpt.of(whole, Ratio.of(5), Ratio.of(4)));
  }

  private static List<Event> from(Timeline timeline, Ratio beat) {
    List<Event> events = new ArrayList<>();
    for (Event event : timeline) {
      if (event.beat().compareTo(beat) >= 0) {
        events.add(event);
      }
    }
    return events;
  }
}
