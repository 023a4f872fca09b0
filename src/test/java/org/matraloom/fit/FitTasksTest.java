package org.matraloom.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.form.Ending;
import org.matraloom.form.Endings;
import org.matraloom.form.GivenPurvanga;
import org.matraloom.form.KoraippuTurn;
import org.matraloom.form.Reduction;
import org.matraloom.kanakku.Cycles;
import org.matraloom.kanakku.Entrance;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.Pieces;
import org.matraloom.repair.Repair;
import org.matraloom.repair.Repairs;
import org.matraloom.schedule.LeadIn;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Edit;
import org.matraloom.score.Performance;
import org.matraloom.score.Sequence;
import org.matraloom.score.Sollu;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * Paper tasks of a composer, with answers. Where a figure was published its source stands beside
 * it; all other answers are derived.
 */
class FitTasksTest {

  private static final RoundPlan PLAN_445 = RoundPlan.of(4, 4, 5);

  @Test
  void fitSeventyToNinety() {
    FitResult result = fromSamam(PLAN_445, 70, 90, Ratio.ZERO);
    assertEquals(1, result.count());
    FitAnswer answer = result.answers().get(0);
    assertEquals(80, answer.matras());
    List<Span> spans = answer.performance().spans();
    assertEquals(
        List.of("0", "20", "40"), spans.stream().map(s -> s.startBeat().toString()).toList());
    assertEquals(Ratio.of(56), answer.performance().endBeat());
    Ratio second = Tempo.of(80).secondsOf(Ratio.ONE);
    assertEquals(Ratio.of(15), spans.get(1).startBeat().times(second));
    assertEquals(Ratio.of(30), spans.get(2).startBeat().times(second));
    assertEquals(Ratio.of(42), answer.beats().times(second));
    assertEquals(
        "80 matras in 4-4-5: 20 + 20 + 16 = 56 beats = 7 avartanas, from samam to samam",
        FitWords.line(answer));
  }

  /** Rising lines of 14, 17 and 20 (rasikas.org, p=380684); the ending derived. */
  @Test
  void buildEighty() {
    GivenPurvanga filling = new GivenPurvanga(80, List.of(14, 17, 20));
    assertEquals(29, filling.left());
    Ending nines = Endings.equal(filling.left()).get(0);
    assertEquals("9(1)9(1)9", nines.written());
    assertEquals("14 + 17 + 20 + 29 = 80", filling.sum(nines));
    Performance performance =
        TriedAnswer.of(
            Cycles.ADI, PLAN_445, 14 + 17 + 20 + nines.matras(), 0, Ratio.ZERO, Ratio.ZERO);
    assertTrue(Landing.of(performance).lands());
  }

  @ParameterizedTest
  @CsvSource({
    "0, 15, 'beat 5 1/4'",
    "1, 17, 'beat 4 3/4'",
    "2, 19, 'beat 4 1/4'",
    "3, 21, 'beat 3 3/4'",
    "4, 23, 'beat 3 1/4'"
  })
  void threeFivesWithAKarvai(int karvai, int matras, String start) {
    FitProblem problem =
        new FitProblem(
            Cycles.ADI,
            RoundPlanReader.read("4-(?)-4-(?)-4"),
            WholeRange.only(5),
            WholeRange.only(karvai),
            new AskedPlaces.AnyStart(),
            AskedPlaces.at(Ratio.ZERO));
    FitResult result = FitSearch.search(problem, 5);
    assertEquals(1, result.count());
    FitAnswer answer = result.answers().get(0);
    assertEquals(Ratio.of(matras, 4), answer.beats());
    assertEquals(start, Cycles.ADI.say(answer.start()));
  }

  @Test
  void sixtyFourIn445IsRepaired() {
    Composition piece = Pieces.said(Cycles.ADI, Pieces.words(64), 4, 4, 5);
    Landing landing = Landing.of(Performance.of(piece));
    assertEquals(Ratio.of(224, 5), landing.beats());
    assertEquals(
        "beat 5 4/5",
        Cycles.ADI.say(landing.performance().endBeat()),
        "four khanda matras after beat 5");
    Map<Repair.Kind, Repair> repairs = cheapest(piece);
    assertTrue(repairs.get(Repair.Kind.ADD).words().startsWith("add 16 matras"));
    Repair drop = repairs.get(Repair.Kind.DROP_AND_START);
    assertTrue(drop.words().startsWith("drop 4 matras"), drop::words);
    assertTrue(drop.words().endsWith("start on beat 7"), drop::words);
    assertEquals(
        "rest 16 matras of khanda nadai (5), that is 3 1/5 beats, before round 3, which then begins"
            + " on beat 4 1/5; hard: the nadai changes inside a beat",
        repairs.get(Repair.Kind.WAIT).words());
    Repair alone = repairs.get(Repair.Kind.LAST_ALONE);
    assertTrue(alone.words().contains("beat 4 1/5"), alone::words);
    assertEquals(1, alone.performance().rounds().size());
    repairs.values().forEach(r -> assertTrue(Landing.of(r.performance()).lands(), r::words));
  }

  @Test
  void tisramVersionOfSixtyFour() {
    RoundPlan plan = RoundPlan.of(4, 4, 3);
    FitProblem problem =
        FitProblem.of(Cycles.ADI, plan, WholeRange.only(64), Ratio.ZERO, Ratio.ZERO);
    assertEquals(0, FitSearch.search(problem, 1).count());
    Performance fails = TriedAnswer.of(Cycles.ADI, plan, 64, 0, Ratio.ZERO, Ratio.ZERO);
    assertEquals(Ratio.of(64, 3), fails.spans().get(2).beats());
    Map<FitAdvice.Change, FitAnswer> advice = advice(problem);
    assertEquals(48, advice.get(FitAdvice.Change.SHORTER).matras());
    FitAnswer longer = advice.get(FitAdvice.Change.LONGER);
    assertEquals(96, longer.matras());
    assertEquals(Ratio.of(10), longer.avartanas());
  }

  @ParameterizedTest
  @CsvSource({
    "4-4-5, 1/2, 35, 115",
    "4-4-5, 3/2, 25, 105",
    "4-4-5, 1, 70, 150",
    "4-4-4, 1/2, 22, 54",
    "4-4-4, 3/2, 34, 66",
    "4-4-4, 3/4, 33, 65"
  })
  void fromSamamToAnEduppu(String plan, String eduppu, int first, int second) {
    Ratio place = ratio(eduppu);
    FitResult result = fromSamam(RoundPlanReader.read(plan).get(0), 3, 160, place);
    assertEquals(first, result.answers().get(0).matras());
    assertEquals(second, result.answers().get(1).matras());
  }

  @Test
  void quarterPlacesAreImpossibleIn445() {
    for (String quarter : List.of("1/4", "3/4")) {
      FitProblem problem =
          FitProblem.of(Cycles.ADI, PLAN_445, new WholeRange(1, 1_000), Ratio.ZERO, ratio(quarter));
      assertEquals(0, FitSearch.search(problem, 1).count());
      LandingGrid reach = LandingGrid.of(problem, PLAN_445);
      assertFalse(reach.isPossible());
      assertEquals(Ratio.of(1, 10), reach.stepBeats());
      assertEquals(
          List.of(
              "4-4-5: impossible with whole matras. The end can only fall on tenths of a beat,"
                  + " and beat 1 "
                  + quarter
                  + " lies 1/20 beat past one of these places."),
          FitWords.why(problem));
      FitAnswer sameplace = advice(problem).get(FitAdvice.Change.EDUPPU_TO_EDUPPU);
      assertEquals(80, sameplace.matras());
      assertEquals(ratio(quarter), sameplace.start());
    }
    FitProblem threeQuarters =
        FitProblem.of(Cycles.ADI, PLAN_445, new WholeRange(1, 200), Ratio.ZERO, ratio("3/4"));
    FitAnswer start = advice(threeQuarters).get(FitAdvice.Change.OTHER_START);
    assertEquals(Ratio.of(1, 4), start.start());
    assertEquals(35, start.matras());
  }

  @Test
  void aNadaiChangeInsideABeatIsFlaggedNotRefused() {
    FitAnswer answer = fromSamam(PLAN_445, 25, 25, ratio("3/2")).answers().get(0);
    assertEquals(1, answer.roundsOffTheClaps().size());
    Entrance hard = answer.roundsOffTheClaps().get(0);
    assertEquals(3, hard.round().number());
    assertEquals(Ratio.of(25, 2), hard.round().startBeat());
    assertTrue(answer.isHardlyPlayable(), "fifths from a half beat on never meet a beat");
    assertTrue(FitWords.line(answer).contains("no matra of round 3 meets a clap"));
    FitAnswer inSix = fromSamam(RoundPlan.of(4, 6), 30, 30, ratio("9/2")).answers().get(0);
    assertEquals(1, inSix.changesInsideABeat().size());
    assertTrue(FitWords.line(inSix).contains("hard: the nadai changes inside a beat"));
  }

  /** 24 + 75 + 29, 29 as nines or sevens, or 24 + 74 + 30 (rasikas.org, p=380684). */
  @Test
  void aReductionFillsTwoLongAvartanas() {
    Reduction held = new Reduction(5, List.of(6, 4, 3, 2));
    assertTrue(Reduction.all(5, 6, 2).contains(held));
    GivenPurvanga filling = new GivenPurvanga(128, List.of(24, held.matras()));
    List<String> sums = new ArrayList<>();
    for (Ending ending : Endings.all(filling.left())) {
      sums.add(
          filling.sum(ending) + " with " + ending.written() + ", borrowed " + ending.borrowed());
    }
    assertTrue(sums.contains("24 + 75 + 29 = 128 with 9(1)9(1)9, borrowed 0"));
    assertTrue(sums.contains("24 + 75 + 29 = 128 with 7(4)7(4)7, borrowed 0"));
    assertTrue(sums.contains("24 + 74 + 30 = 128 with 10 10 10, borrowed 1"));
    Performance whole = TriedAnswer.of(Cycles.ADI, RoundPlan.of(4), 128, 0, Ratio.ZERO, Ratio.ZERO);
    assertEquals(Ratio.of(4), Landing.of(whole).avartanas());
  }

  /** 96 units in 3, 4 and 6 a beat: four, three and two avartanas ("4-3-6" korvai article). */
  @Test
  void threeDensities() {
    FitAnswer answer = fromSamam(RoundPlan.of(3, 4, 6), 96, 96, Ratio.ZERO).answers().get(0);
    assertEquals(
        List.of(Ratio.of(4), Ratio.of(3), Ratio.of(2)),
        answer.performance().spans().stream().map(s -> s.beats().dividedBy(8)).toList());
  }

  /**
   * 224 matras are 32 groups of seven and seven avartanas (Tamil lesson page on adi, groups of 7).
   */
  @Test
  void allSevens() {
    FitResult result = fromSamam(RoundPlan.of(4), 224, 224, Ratio.ZERO);
    FitAnswer answer = result.answers().get(0);
    assertEquals(Ratio.of(56), answer.beats());
    assertEquals(Ratio.of(7), answer.avartanas());
    assertEquals(new KoraippuTurn(224, 7), KoraippuTurn.halving(224, 7).get(0));
    assertEquals(32, new KoraippuTurn(224, 7).groups());
    assertEquals(0, new KoraippuTurn(224, 7).gapMatras());
  }

  /** Two takitas, or one cycle more: nine (Tamil lesson page on misra chapu, lead-in count). */
  @Test
  void leadInWords() {
    FitProblem problem =
        new FitProblem(
            Cycles.MISRA_CHAPU,
            List.of(RoundPlan.of(3)),
            WholeRange.only(15),
            WholeRange.only(0),
            new AskedPlaces.AnyStart(),
            AskedPlaces.at(Ratio.ZERO));
    FitAnswer answer = FitSearch.search(problem, 1).answers().get(0);
    assertEquals(Ratio.of(2), answer.start(), "a phrase of 5 beats starts after 2");
    assertEquals("2 x takita", said(Cycles.MISRA_CHAPU, answer.start(), 3, 0));
    assertEquals("9 x takita", said(Cycles.MISRA_CHAPU, answer.start(), 3, 1));
    assertEquals("", said(Cycles.ADI, Ratio.ZERO, 4, 0));
    assertEquals("7 x takadimi, takita", said(Cycles.ADI, Ratio.of(-1, 4), 4, 0));
    assertEquals("takadimi, taka", said(Cycles.ADI, Ratio.of(3, 2), 4, 0));
    assertEquals(Optional.empty(), LeadIn.of(Cycles.ADI, Ratio.of(1, 7), 4, 0));
  }

  private static String said(Avartana avartana, Ratio start, int nadai, int cycles) {
    return LeadIn.of(avartana, start, nadai, cycles)
        .orElseThrow()
        .said(
            size ->
                Pieces.LEXICON.words(size).stream()
                    .map(Sollu::spelling)
                    .collect(Collectors.joining()));
  }

  /**
   * Gaps of 4, 2 and 1 as the turn is halved agree with a forum description (rasikas.org t=11637).
   */
  @Test
  void koraippuGaps() {
    List<KoraippuTurn> turns = KoraippuTurn.halving(32, 7).subList(0, 3);
    assertEquals(List.of(32, 16, 8), turns.stream().map(KoraippuTurn::matras).toList());
    assertEquals(List.of(4, 2, 1), turns.stream().map(KoraippuTurn::gapMatras).toList());
  }

  /** Printed as landing with a start one matra late (questions.collegedunia.com); it does not. */
  @Test
  void aPrintedSumIsCaughtAndRepaired() {
    Sequence song =
        Sequence.of(
            Pieces.group(7, 0),
            Pieces.group(7, 0),
            Pieces.group(5, 2),
            Pieces.group(5, 2),
            Pieces.group(5, 0));
    Composition late = new Edit.Start(ratio("1/4")).appliedTo(Pieces.said(Cycles.ADI, song, 4));
    Landing landing = Landing.of(Performance.of(late));
    assertEquals(Ratio.of(33), landing.matras());
    assertEquals(Ratio.of(2), landing.missMatras());
    Repair first = Repairs.of(late, Pieces.LEXICON, Pieces.talas()).get(0);
    assertEquals("start on beat 8 3/4", first.words());
    Repair cut = cheapest(late).get(Repair.Kind.DROP_AND_START);
    assertTrue(cut.words().startsWith("drop 1 matra"), cut::words);
    assertTrue(cut.words().endsWith("start on samam"), cut::words);
  }

  @Test
  void sevenBeats() {
    FitResult result = fromSamam(Cycles.MISRA_CHAPU, PLAN_445, 1, 80, Ratio.ZERO);
    FitAnswer ten = result.answers().get(1);
    assertEquals(10, ten.matras());
    assertEquals(Ratio.ONE, ten.avartanas());
    FitAnswer eighty = result.answers().get(result.answers().size() - 1);
    assertEquals(80, eighty.matras());
    assertEquals(Ratio.of(56), eighty.beats());
    assertEquals(Ratio.of(8), eighty.avartanas());
  }

  private static Map<Repair.Kind, Repair> cheapest(Composition piece) {
    return Repairs.of(piece, Pieces.LEXICON, Pieces.talas()).stream()
        .collect(Collectors.toMap(Repair::kind, Function.identity(), (first, later) -> first));
  }

  private static Map<FitAdvice.Change, FitAnswer> advice(FitProblem problem) {
    return FitAdvice.forProblem(problem).stream()
        .collect(Collectors.toMap(FitAdvice::change, FitAdvice::answer));
  }

  private static FitResult fromSamam(RoundPlan plan, int low, int high, Ratio eduppu) {
    return fromSamam(Cycles.ADI, plan, low, high, eduppu);
  }

  private static FitResult fromSamam(
      Avartana avartana, RoundPlan plan, int low, int high, Ratio eduppu) {
    return FitSearch.search(
        FitProblem.of(avartana, plan, new WholeRange(low, high), Ratio.ZERO, eduppu), 100);
  }

  private static Ratio ratio(String text) {
    String[] parts = text.split("/");
    return parts.length == 1
        ? Ratio.of(Long.parseLong(parts[0]))
        : Ratio.of(Long.parseLong(parts[0]), Long.parseLong(parts[1]));
  }
}
