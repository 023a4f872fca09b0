package org.matraloom.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.kanakku.Landing;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.FingerCustom;
import org.matraloom.score.Jati;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.spell.ChapuTala;
import org.matraloom.spell.ScorePrinter;
import org.matraloom.spell.TalaFamily;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

class PracticeTest {

  private static final Lexicon LEXICON = Lexicon.standard();
  private static final Avartana ADI =
      Avartana.of(TalaFamily.TRIPUTA.tala(Jati.CHATUSRA), 1, FingerCustom.RESTART);
  private static final Avartana MISRA_CHAPU =
      Avartana.of(ChapuTala.MISRA.tala(), 1, FingerCustom.RESTART);
  private static final Tempo SIXTY = Tempo.of(60);

  private static final String SONG =
      """
      title Ferry Song
      tala  adi
      tempo 72
      Drip = takita , takita ; [takadimi] .
      Rain = takadimi takajunu tom , , ,
      Fall = 5(2)5(2)5
      Song = Drip Rain takadimi takajunu Fall Fall .
      perform
        Song x2 nadai 4
        Song    nadai 5
      """;

  @Test
  void halvingKeepsEightFourTwoAndOneBeats() {
    Composition drill =
        SwitchDrill.between(ADI, SIXTY, List.of(4, 5), SwitchDrill.Unit.HALVING, 4, LEXICON);
    List<Ratio> lengths = Performance.of(drill).rounds().stream().map(Span.Round::beats).toList();
    List<Ratio> expected = new ArrayList<>();
    repeat(expected, 8, 4 * 2);
    repeat(expected, 4, 4 * 2);
    repeat(expected, 2, 4 * 4);
    repeat(expected, 1, 4 * 8);
    assertEquals(expected, lengths);
    alternates(drill, 4, 5);
    assertEquals("takadimi", said(drill, 4));
    assertEquals("takatakita", said(drill, 5));
  }

  @Test
  void anyPairOfNadaisInAnyTalaBeginsAndEndsOnSamam() {
    int drills = 0;
    for (Avartana avartana : List.of(ADI, MISRA_CHAPU)) {
      for (int one = 3; one <= 9; one++) {
        for (int other = 3; other <= 9; other++) {
          for (SwitchDrill.Unit unit : SwitchDrill.Unit.values()) {
            Composition drill =
                SwitchDrill.between(avartana, SIXTY, List.of(one, other), unit, 2, LEXICON);
            Performance performance = Performance.of(drill);
            assertEquals(Ratio.ZERO, avartana.placeOf(performance.endBeat()));
            assertTrue(Landing.of(performance).lands());
            alternates(drill, one, other);
            drills++;
          }
        }
      }
    }
    assertEquals(2 * 49 * 5, drills);
  }

  /** Order of the five nadais as it is taught: tisra, chatusra, khanda, misra, sankirna. */
  @Test
  void allNadaisGoUpAndDown() {
    Composition drill = SwitchDrill.upAndDown(ADI, SIXTY, 1, LEXICON);
    assertEquals(
        List.of(3, 4, 5, 7, 9, 7, 5, 4, 3),
        Performance.of(drill).rounds().stream().map(Span.Round::nadai).toList());
    assertEquals(Ratio.of(72), Performance.of(drill).beats());
  }

  @Test
  void randomSwitchesAreTheSameForTheSameSeedAndNeverCrossSamam() {
    Composition drill = SwitchDrill.random(ADI, SIXTY, List.of(4, 5), 40, 7, LEXICON);
    assertEquals(drill, SwitchDrill.random(ADI, SIXTY, List.of(4, 5), 40, 7, LEXICON));
    assertTrue(!drill.equals(SwitchDrill.random(ADI, SIXTY, List.of(4, 5), 40, 8, LEXICON)));
    assertEquals(Ratio.of(320), Performance.of(drill).beats());
    long lengths =
        Performance.of(drill).rounds().stream().map(Span.Round::beats).distinct().count();
    assertTrue(lengths >= 4, "lengths: " + lengths);
    for (Span.Round round : Performance.of(drill).rounds()) {
      Ratio place = ADI.placeOf(round.startBeat());
      assertTrue(place.plus(round.beats()).compareTo(Ratio.of(8)) <= 0);
    }
  }

  @Test
  void theJoinIsLoopedAtItsPlaceInTheTala() {
    Composition song = read(SONG);
    Performance whole = Performance.of(song);
    Ratio seam = whole.rounds().get(2).startBeat();
    Composition join = JoinDrill.of(song, 1, 4, 10, LEXICON);
    Performance loop = Performance.of(join);
    assertEquals(1, JoinDrill.joins(song));
    assertEquals(ADI.placeOf(seam.minus(Ratio.of(4))), join.startBeat());
    assertEquals(Ratio.of(80), loop.beats(), "ten loops of eight beats");
    List<String> expected = sollus(song, seam.minus(Ratio.of(4)), seam.plus(Ratio.of(4)));
    Ratio start = loop.startBeat();
    for (int time = 0; time < 10; time++) {
      Ratio from = start.plus(Ratio.of(8L * time));
      assertEquals(
          shifted(expected, seam.minus(Ratio.of(4))),
          shifted(sollus(join, from, from.plus(Ratio.of(8))), from),
          "loop " + time);
    }
    assertTrue(expected.size() > 20, "sollus compared: " + expected);
  }

  @Test
  void theJoinKeepsTheMarksOfBreath() {
    Composition song =
        read(
            """
            tala adi
            tempo 60
            Song = takadimi takajunu takita tom , ' , taka '! ta ,
            perform
              Song nadai 4
              Song nadai 5
            """);
    String drill = ScorePrinter.print(JoinDrill.of(song, 1, 4, 2, LEXICON));
    assertTrue(drill.contains("tom ; ' taka '! ta ,"), drill);
  }

  @Test
  void aPhraseIsLoopedAtItsPlaceInTheTala() {
    Composition song = read(SONG);
    Composition loop = LoopDrill.of(song, "Rain", 3);
    assertEquals(Ratio.of(3), loop.startBeat(), "Drip has 3+1+3+2+2+1 = 12 matras");
    assertEquals(Ratio.of(24), Performance.of(loop).beats(), "three matras fill up to 8 beats");
    IllegalArgumentException none =
        assertThrows(IllegalArgumentException.class, () -> LoopDrill.of(song, "Storm", 3));
    assertTrue(none.getMessage().contains("Drip"), none.getMessage());
  }

  /** What leads to a phrase is what the piece says before it, at its own place in the tala. */
  @Test
  void aPhraseIsLoopedWithTheBeatsThatLeadToIt() {
    Composition song = read(SONG);
    Composition loop = LoopDrill.of(song, "Rain", 2, 3, LEXICON);
    assertEquals(Ratio.ONE, loop.startBeat(), "two beats before beat 3");
    List<String> whole = sollus(song);
    List<String> said = sollus(loop);
    int lead = (int) before(song, Ratio.of(3)) - (int) before(song, Ratio.ONE);
    assertTrue(lead > 0, "sollus in the two beats before");
    int from = (int) before(song, Ratio.ONE);
    int length = said.size() / 3;
    assertEquals(whole.subList(from, from + length), said.subList(0, length));
    assertEquals(said.subList(0, length), said.subList(length, 2 * length));
    assertEquals(Ratio.of(24), Performance.of(loop).beats(), "three avartanas of 8 beats");
  }

  @Test
  void beforeAPhraseThatBeginsThePieceTheHandAloneLeads() {
    Composition song = read(SONG);
    Composition loop = LoopDrill.of(song, "Drip", 2, 2, LEXICON);
    assertEquals(Ratio.of(6), loop.startBeat());
    Ratio first = Performance.of(loop).spoken().findFirst().orElseThrow().beat();
    assertEquals(Ratio.of(8), first, "two beats of the hand, then the samam");
    assertEquals(2 * sollus(LoopDrill.of(song, "Drip", 1)).size(), sollus(loop).size());
    assertThrows(IllegalArgumentException.class, () -> LoopDrill.of(song, "Rain", 0, 2, LEXICON));
  }

  private static List<String> sollus(Composition piece) {
    return Performance.of(piece).spoken().map(said -> said.sollu().sound()).toList();
  }

  private static long before(Composition piece, Ratio beat) {
    return Performance.of(piece).spoken().filter(s -> s.beat().compareTo(beat) < 0).count();
  }

  @Test
  void theThreeSpeedsFillTheSameTime() {
    Composition speeds = SpeedsDrill.of(read(SONG), "Rain", true, false, 1);
    Performance performance = Performance.of(speeds);
    assertEquals(
        List.of(4, 4, 6, 6, 6, 8, 8, 8, 8, 16, 16, 16, 16, 16, 16, 16, 16),
        performance.rounds().stream().map(Span.Round::matrasPerBeat).toList());
    Composition back = SpeedsDrill.of(read(SONG), "Rain", false, true, 1);
    assertEquals(16, Performance.of(back).rounds().get(0).matrasPerBeat());
    assertEquals(Ratio.ZERO, ADI.placeOf(performance.endBeat()));
  }

  /** The gap is the call's length rounded up to whole avartanas. */
  @Test
  void gapsAreAsLongAsCallsInWholeAvartanas() {
    Composition answer = AnswerDrill.of(read(SONG), 1);
    Performance performance = Performance.of(answer);
    List<String> sections = new ArrayList<>();
    List<Span> spans = performance.spans();
    for (int at = 0; at < spans.size(); at += 3) {
      Span.Round call = (Span.Round) spans.get(at);
      sections.add(call.phrase());
      assertEquals(Ratio.ZERO, ADI.placeOf(call.startBeat()));
      Ratio gap = spans.get(at + 2).beats();
      assertEquals(Ratio.of(8 * call.beats().dividedBy(8).ceil()), gap);
      assertEquals(Ratio.ZERO, ADI.placeOf(spans.get(at + 2).startBeat()));
    }
    assertEquals(
        List.of("Drip", "Rain", "Part1", "Fall", "Drip", "Rain", "Part1", "Fall"), sections);
  }

  /** Published ladder: 70, then 10 more each time up to 140, which is eight rungs. */
  @Test
  void aLadderFrom70By10To140HasEightRungs() {
    TempoLadder up = ladder(TempoLadder.Way.UP, 1);
    assertEquals(
        List.of(70L, 80L, 90L, 100L, 110L, 120L, 130L, 140L),
        up.rungs().stream().map(rung -> rung.beatsPerMinute().floor()).toList());
    assertEquals(Tempo.of(140), ladder(TempoLadder.Way.DOWN, 1).rungs().get(0));
    assertEquals(15, ladder(TempoLadder.Way.BOTH, 1).rungs().size());
    assertEquals(16, ladder(TempoLadder.Way.UP, 2).rungs().size());
  }

  /** At 79 beats a minute five matras a beat are 6.58 a second, at 78 they are 6.5. */
  @Test
  void theFastestLineSetsThePace() {
    assertEquals(Tempo.of(78), TempoLadder.fastestAt(read(SONG), 6.57));
  }

  @Test
  void everyDrillCanBeWrittenAndReadAgain() {
    Composition song = read(SONG);
    List<Composition> drills =
        List.of(
            SwitchDrill.between(
                MISRA_CHAPU, SIXTY, List.of(6, 8), SwitchDrill.Unit.HALVING, 2, LEXICON),
            SwitchDrill.upAndDown(ADI, SIXTY, 2, LEXICON),
            SwitchDrill.random(ADI, SIXTY, List.of(3, 4, 5, 6, 7, 8, 9), 20, 3, LEXICON),
            JoinDrill.of(song, 1, 4, 3, LEXICON),
            JoinDrill.of(song, 1, 3, 3, LEXICON),
            LoopDrill.of(song, "Drip", 3),
            SpeedsDrill.of(song, "Fall", true, false, 2),
            AnswerDrill.of(song, 2));
    for (Composition drill : drills) {
      String score = ScorePrinter.print(drill);
      Reading again = ScoreReader.read(score, "drill.loom", LEXICON);
      assertEquals(List.of(), again.problems(), score);
      assertEquals(events(drill), events(again.composition().orElseThrow()), () -> score);
      assertTrue(Landing.of(Performance.of(drill)).lands(), score);
    }
  }

  private static TempoLadder ladder(TempoLadder.Way way, int repeats) {
    return TempoLadder.of(Ratio.of(70), Ratio.of(10), Ratio.of(140), repeats, way);
  }

  private static Composition read(String score) {
    return ScoreReader.read(score, "song.loom", LEXICON).composition().orElseThrow();
  }

  private static void repeat(List<Ratio> list, long beats, int times) {
    for (int time = 0; time < times; time++) {
      list.add(Ratio.of(beats));
    }
  }

  private static void alternates(Composition drill, int one, int other) {
    int turn = 0;
    for (Step step : drill.plan()) {
      if (step instanceof Step.Say say) {
        assertTrue(say.nadai() == one || say.nadai() == other);
        turn++;
      }
    }
    assertTrue(turn >= 2);
  }

  private static String said(Composition drill, int nadai) {
    StringBuilder said = new StringBuilder();
    Performance performance = Performance.of(drill);
    for (Event event : ScoreTimeline.of(performance, 0)) {
      if (event instanceof Event.SolluSaid sollu
          && performance.rounds().get(sollu.round() - 1).nadai() == nadai
          && said.length() < 2 * nadai) {
        said.append(sollu.sollu().spelling());
      }
    }
    return said.toString();
  }

  private static List<Event> events(Composition composition) {
    List<Event> events = new ArrayList<>();
    ScoreTimeline.of(Performance.of(composition), 1).forEach(events::add);
    return events;
  }

  /** What is said in a window, each with its place and length. */
  private static List<String> sollus(Composition composition, Ratio from, Ratio to) {
    List<String> sollus = new ArrayList<>();
    for (Event event : ScoreTimeline.of(Performance.of(composition), 0)) {
      if (event instanceof Event.SolluSaid said
          && said.beat().compareTo(from) >= 0
          && said.beat().compareTo(to) < 0) {
        sollus.add(said.beat() + " " + said.sollu() + " " + said.spoken().ownBeats());
      }
    }
    return sollus;
  }

  private static List<String> shifted(List<String> sollus, Ratio by) {
    return sollus.stream()
        .map(
            sollu -> {
              String[] parts = sollu.split(" ", 2);
              String[] number = parts[0].split("/");
              Ratio beat =
                  Ratio.of(
                      Long.parseLong(number[0]),
                      number.length == 1 ? 1 : Long.parseLong(number[1]));
              return beat.minus(by) + " " + parts[1];
            })
        .toList();
  }
}
