package org.matraloom.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Element;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Jati;
import org.matraloom.score.Kriya;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.Step;
import org.matraloom.spell.TalaFamily;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * The main case: adi, 80 matras, twice at 4 and once at 5 a beat.
 *
 * <p>Common practice: two rounds fill five avartanas, the third begins at the sixth and fills two.
 */
class KorvaiTimelineTest {

  private static final Avartana ADI =
      Avartana.of(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA), 1, FingerCustom.RESTART);
  private static final int MATRAS = 80;

  @Test
  void theThirdRoundBeginsWithTheSixthAvartanaAndFillsTwo() {
    List<Event> events = events(Ratio.ZERO, 1);
    List<Event.RoundStart> rounds = only(Event.RoundStart.class, events);
    assertEquals(
        List.of(Ratio.ZERO, Ratio.of(20), Ratio.of(40)),
        rounds.stream().map(Event.RoundStart::beat).toList());
    List<Event.SolluSaid> sollus = only(Event.SolluSaid.class, events);
    assertEquals(3 * MATRAS, sollus.size());
    Event.SolluSaid first = sollus.get(0);
    Event.SolluSaid last = sollus.get(sollus.size() - 1);
    assertEquals(Ratio.of(56), last.beat().plus(last.beats()).minus(first.beat()));
    assertEquals(
        List.of(new Event.NadaiChange(Ratio.of(40), 4, 5)), only(Event.NadaiChange.class, events));
    assertEquals(
        new Event.LandingPoint(Ratio.of(56)), only(Event.LandingPoint.class, events).get(0));
    List<Event.HandBeat> hand = only(Event.HandBeat.class, events);
    assertTrue(hand.get(hand.size() - 1).samam(), "the last clap is the samam it lands on");
  }

  @Test
  void theSpacingOfTheSollusIsFiveToFour() {
    List<Event.SolluSaid> sollus = only(Event.SolluSaid.class, events(Ratio.ZERO, 0));
    Ratio slow = sollus.get(1).beat().minus(sollus.get(0).beat());
    Ratio quick = sollus.get(161).beat().minus(sollus.get(160).beat());
    assertEquals(new Ratio(5, 4), slow.dividedBy(quick));
    for (int sollu = 1; sollu < sollus.size(); sollu++) {
      Ratio spacing = sollus.get(sollu).beat().minus(sollus.get(sollu - 1).beat());
      assertEquals(sollu <= 160 ? slow : quick, spacing, "before sollu " + sollu);
    }
  }

  /** Boundaries at 0, 20, 40 and 56 beats are 0, 15, 30 and 42 seconds at 80 beats a minute. */
  @Test
  void theBoundariesInSeconds() {
    FrameClock clock = new FrameClock(Tempo.of(80), 48_000, Ratio.ZERO);
    List<Double> seconds = new ArrayList<>();
    for (Event event : events(Ratio.ZERO, 0)) {
      if (event instanceof Event.RoundStart || event instanceof Event.LandingPoint) {
        seconds.add(clock.secondsAt(event.beat()));
      }
    }
    assertEquals(List.of(0.0, 15.0, 30.0, 42.0), seconds);
  }

  /** No clap is a single frame off where decimal division puts its beat, through the change. */
  @ParameterizedTest
  @ValueSource(ints = {44_100, 48_000, 96_000})
  void clapsSitOnExactBeatFramesThroughTheChange(int rate) {
    for (String tempo : List.of("37.5", "60", "66", "71", "200")) {
      BigDecimal framesPerMinute = BigDecimal.valueOf(60L * rate);
      BigDecimal beatsPerMinute = new BigDecimal(tempo);
      FrameClock clock =
          new FrameClock(
              new Tempo(new Ratio(beatsPerMinute.movePointRight(1).longValueExact(), 10)),
              rate,
              Ratio.of(-8));
      int beat = 0;
      for (Event.HandBeat hand : only(Event.HandBeat.class, events(Ratio.ZERO, 1))) {
        long frame =
            framesPerMinute
                .multiply(BigDecimal.valueOf(beat++))
                .divide(beatsPerMinute, 0, RoundingMode.HALF_UP)
                .longValueExact();
        assertEquals(frame, clock.frameAt(hand.beat()), "beat " + beat + " at " + tempo);
      }
      assertEquals(8 + 56 + 1, beat);
    }
  }

  /**
   * A count-in of one avartana begins on samam with the real kriyas, and the entry falls where it
   * is felt: 48 000 frames a beat at 60 beats a minute and 48 kHz.
   */
  @ParameterizedTest
  @CsvSource({
    // start in quarter beats, beats counted before the samam of the entry's avartana, entry frame
    "0, 384000",
    "1, 396000",
    "2, 408000",
    "3, 420000",
    "6, 456000",
    "16, 576000",
    "-1, 372000"
  })
  void theCountInPutsTheEntryInPlace(int startQuarters, long entryFrame) {
    Ratio start = new Ratio(startQuarters, 4);
    Timeline timeline = timeline(start, 1);
    assertEquals(Ratio.of(-8), timeline.originBeat());
    FrameClock clock = timeline.clock(48_000);
    List<Event> events = new ArrayList<>();
    timeline.forEach(events::add);
    assertEquals(new Event.CountIn(Ratio.of(-8), 1), events.get(0));
    assertEquals(entryFrame, clock.frameAt(only(Event.SolluSaid.class, events).get(0).beat()));
    assertEquals(entryFrame, clock.frameAt(only(Event.RoundStart.class, events).get(0).beat()));
    List<Event.HandBeat> hand = only(Event.HandBeat.class, events);
    assertEquals(ADI.kriyas(), hand.subList(0, 8).stream().map(Event.HandBeat::kriya).toList());
    assertEquals(new Kriya.Clap(), hand.get(8).kriya());
    assertTrue(hand.get(0).samam() && hand.get(8).samam());
    for (int beat = 0; beat < 8; beat++) {
      assertEquals(48_000L * beat, clock.frameAt(hand.get(beat).beat()));
      boolean begun = hand.get(beat).beat().compareTo(start) >= 0;
      assertEquals(begun ? 1 : 0, hand.get(beat).round());
    }
  }

  @Test
  void ticksAgreeWithTheSollusWhereverTheRoundBegins() {
    for (Ratio start : List.of(Ratio.ZERO, new Ratio(1, 2), new Ratio(7, 5), new Ratio(-1, 4))) {
      List<Event> events = events(start, 1);
      List<Ratio> sollus = only(Event.SolluSaid.class, events).stream().map(Event::beat).toList();
      List<Ratio> ticks =
          only(Event.Tick.class, events).stream()
              .filter(tick -> tick.round() > 0)
              .map(Event::beat)
              .toList();
      assertEquals(sollus, ticks);
    }
  }

  private static List<Event> events(Ratio start, int countIn) {
    List<Event> events = new ArrayList<>();
    timeline(start, countIn).forEach(events::add);
    return events;
  }

  private static Timeline timeline(Ratio start, int countIn) {
    Element matras = new Element.Word("ta", Collections.nCopies(MATRAS, new Sollu("ta", "ta")));
    Composition composition =
        new Composition(
            "",
            ADI,
            Tempo.of(60),
            start,
            Ratio.ZERO,
            Map.of("Song", Sequence.of(matras)),
            List.of(new Step.Say("Song", 2, 4, 1), new Step.Say("Song", 1, 5, 1)));
    return ScoreTimeline.of(Performance.of(composition), countIn);
  }

  private static <E extends Event> List<E> only(Class<E> kind, List<Event> events) {
    return events.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
