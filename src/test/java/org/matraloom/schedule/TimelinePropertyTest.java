package org.matraloom.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Spoken;
import org.matraloom.score.Step;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** What holds for the timeline of every composition, on random ones. */
class TimelinePropertyTest {

  private static final List<Class<? extends Event>> KINDS =
      List.of(
          Event.CountIn.class,
          Event.RoundStart.class,
          Event.SectionStart.class,
          Event.NadaiChange.class,
          Event.HandBeat.class,
          Event.Tick.class,
          Event.SolluSaid.class,
          Event.Silence.class,
          Event.LandingPoint.class);

  private final List<Composition> compositions = RandomCompositions.some(100);

  @Test
  void eventsComeInOrderOfBeatAndOfKind() {
    int sameBeat = 0;
    for (Composition composition : compositions) {
      Event before = null;
      for (Event event : timeline(composition, 1)) {
        if (before != null) {
          int order = before.beat().compareTo(event.beat());
          assertTrue(order <= 0, before + " before " + event);
          if (order == 0) {
            sameBeat++;
            assertTrue(rank(before) <= rank(event), before + " before " + event);
          }
        }
        before = event;
      }
      assertTrue(before instanceof Event.LandingPoint || before instanceof Event.HandBeat);
    }
    assertTrue(sameBeat > 10_000, "events at one beat were met: " + sameBeat);
  }

  private static int rank(Event event) {
    return KINDS.indexOf(event.getClass());
  }

  @Test
  void theHandGivesOneKriyaOnEveryBeat() {
    for (Composition composition : compositions) {
      for (int countIn = 0; countIn <= 2; countIn++) {
        Timeline timeline = timeline(composition, countIn);
        Avartana avartana = composition.avartana();
        long beat = timeline.originBeat().floor();
        assertEquals(Ratio.of(beat), timeline.originBeat());
        for (Event.HandBeat hand : only(Event.HandBeat.class, timeline)) {
          assertEquals(Ratio.of(beat), hand.beat());
          assertEquals(avartana.kriyas().get(akshara(beat, avartana)), hand.kriya());
          assertEquals(Math.floorMod(beat, avartana.beats()) == 0, hand.samam());
          assertEquals(Math.floorMod(beat, avartana.kalai()) != 0, hand.again());
          beat++;
        }
        assertEquals(timeline.endBeat().plus(Ratio.ONE), Ratio.of(beat));
        assertEquals(timeline.performance().endBeat().ceil(), timeline.endBeat().floor());
      }
    }
  }

  private static int akshara(long beat, Avartana avartana) {
    return Math.floorMod(beat, avartana.beats()) / avartana.kalai();
  }

  /** Sollus with their karvais and silences fill the performance without gap or overlap. */
  @Test
  void sollusAndSilencesFillTheWholeLength() {
    int sollus = 0;
    for (Composition composition : compositions) {
      Timeline timeline = timeline(composition, 1);
      Performance performance = timeline.performance();
      Ratio now = performance.startBeat();
      long said = 0;
      for (Event event : timeline) {
        if (event instanceof Event.SolluSaid sollu) {
          assertEquals(now, sollu.beat());
          Spoken spoken = sollu.spoken();
          assertTrue(spoken.ownBeats().signum() > 0);
          assertTrue(sollu.beats().compareTo(spoken.ownBeats()) >= 0);
          assertEquals(!sollu.beats().equals(spoken.ownBeats()), spoken.isRinging());
          now = now.plus(sollu.beats());
          said++;
        } else if (event instanceof Event.Silence silence) {
          assertEquals(now, silence.beat());
          now = now.plus(silence.matras().beats());
        } else if (event instanceof Event.LandingPoint landing) {
          assertEquals(performance.endBeat(), landing.beat());
        }
      }
      assertEquals(performance.endBeat(), now);
      assertEquals(performance.rounds().stream().mapToLong(Span.Round::sollus).sum(), said);
      assertEquals(1, only(Event.LandingPoint.class, timeline).size());
      sollus += (int) said;
    }
    assertTrue(sollus > 20_000, "sollus were met: " + sollus);
  }

  @Test
  void roundsAreMarkedWhereTheyBegin() {
    for (Composition composition : compositions) {
      Timeline timeline = timeline(composition, 1);
      List<Span.Round> rounds = timeline.performance().rounds();
      List<Event.RoundStart> starts = only(Event.RoundStart.class, timeline);
      assertEquals(rounds.size(), starts.size());
      for (int index = 0; index < rounds.size(); index++) {
        Span.Round round = rounds.get(index);
        assertEquals(
            new Event.RoundStart(
                round.startBeat(), round.number(), round.phrase(), round.nadai(), round.kalam()),
            starts.get(index));
      }
    }
  }

  @Test
  void theNadaiChangesFromWhatItWasToWhatTheTicksBecome() {
    int changes = 0;
    for (Composition composition : compositions) {
      int density = 0;
      for (Event event : timeline(composition, 0)) {
        if (event instanceof Event.NadaiChange change) {
          assertEquals(density, change.from(), "at " + change.beat());
          density = change.to();
          changes++;
        } else if (event instanceof Event.Tick tick) {
          assertTrue(density == 0 || density == tick.matrasPerBeat(), "at " + tick.beat());
          density = tick.matrasPerBeat();
        }
      }
    }
    assertTrue(changes > 1_000, "changes were met: " + changes);
  }

  @Test
  void ticksNeverComeTwiceAtOnePlace() {
    for (Composition composition : compositions) {
      Timeline timeline = timeline(composition, 1);
      List<Event.Tick> ticks = only(Event.Tick.class, timeline);
      assertTrue(ticks.get(0).beat().compareTo(timeline.originBeat()) >= 0);
      for (int index = 1; index < ticks.size(); index++) {
        assertTrue(ticks.get(index - 1).beat().compareTo(ticks.get(index).beat()) < 0);
      }
    }
  }

  @Test
  void theCountInOnlyPutsBeatsBefore() {
    for (Composition composition : compositions.subList(0, 50)) {
      Ratio start = composition.startBeat();
      List<Event> without = from(start, timeline(composition, 0));
      assertEquals(without, from(start, timeline(composition, 1)));
      assertEquals(without, from(start, timeline(composition, 3)));
    }
  }

  private static List<Event> from(Ratio start, Timeline timeline) {
    List<Event> events = new ArrayList<>();
    timeline.forEach(events::add);
    return events.stream()
        .filter(event -> event.beat().compareTo(start) >= 0)
        .filter(event -> !(event instanceof Event.CountIn))
        .toList();
  }

  @Test
  void timesDoubleWhenTheTempoHalves() {
    int events = 0;
    for (Composition composition : compositions.subList(0, 50)) {
      Timeline timeline = timeline(composition, 1);
      Tempo half = composition.tempo().scaled(new Ratio(1, 2));
      FrameClock clock = timeline.clock(96_000);
      FrameClock slow = timeline(composition.at(half), 1).clock(48_000);
      for (Event event : timeline) {
        assertEquals(2 * clock.secondsAt(event.beat()), slow.secondsAt(event.beat()));
        assertEquals(clock.frameAt(event.beat()), slow.frameAt(event.beat()));
        events++;
      }
    }
    assertTrue(events > 10_000, "events were met: " + events);
  }

  @Test
  void concatenationAdds() {
    for (int index = 1; index < 90; index++) {
      Composition composition = compositions.get(index);
      List<Step> said = composition.plan().stream().filter(Step.Say.class::isInstance).toList();
      List<Step> twice = new ArrayList<>(said);
      twice.addAll(said);
      Performance once = Performance.of(withPlan(composition, said));
      Performance both = Performance.of(withPlan(composition, twice));
      assertEquals(once.beats().times(2), both.beats());
      List<Event.SolluSaid> first = only(Event.SolluSaid.class, ScoreTimeline.of(once, 0));
      List<Event.SolluSaid> all = only(Event.SolluSaid.class, ScoreTimeline.of(both, 0));
      assertEquals(2 * first.size(), all.size());
      for (int sollu = 0; sollu < first.size(); sollu++) {
        Event.SolluSaid again = all.get(first.size() + sollu);
        assertEquals(first.get(sollu).beat().plus(once.beats()), again.beat());
        assertEquals(first.get(sollu).sollu(), again.sollu());
      }
    }
  }

  private static Composition withPlan(Composition composition, List<Step> plan) {
    return new Composition(
        composition.title(),
        composition.avartana(),
        composition.tempo(),
        composition.startBeat(),
        composition.eduppuBeat(),
        composition.phrases(),
        plan);
  }

  private static Timeline timeline(Composition composition, int countIn) {
    return ScoreTimeline.of(Performance.of(composition), countIn);
  }

  private static <E extends Event> List<E> only(Class<E> kind, Timeline timeline) {
    List<E> events = new ArrayList<>();
    for (Event event : timeline) {
      if (kind.isInstance(event)) {
        events.add(kind.cast(event));
      }
    }
    return events;
  }
}
