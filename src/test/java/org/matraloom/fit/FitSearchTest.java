package org.matraloom.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.matraloom.kanakku.Cycles;
import org.matraloom.score.Avartana;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/**
 * Lengths, starts and waits that land; figures without a source are derived (whole-number sums).
 */
class FitSearchTest {

  private static final WholeRange TO_500 = new WholeRange(1, 500);

  @ParameterizedTest
  @CsvSource({
    "4-4-4, 32, 28, 20, 4, 8",
    "4-4-5, 80, 10, 50, 30, 60",
    "4-4-3, 48, 42, 6, 18, 36",
    "4-4-6, 12, 21, 15, 9, 9",
    "4-4-7, 112, 98, 70, 14, 28",
    "4-4-9, 144, 126, 90, 54, 108",
    "3-4-6, 32, 28, 20, 4, 8",
    "4-3-5, 480, 420, 300, 180, 360",
    "4-5-6, 480, 420, 300, 180, 360"
  })
  void smallestLengthFromSamamToSamam(
      String plan, int adi, int seven, int five, int three, int six) {
    RoundPlan rounds = RoundPlanReader.read(plan).get(0);
    assertEquals(adi, smallest(rounds, Cycles.ADI));
    assertEquals(seven, smallest(rounds, Cycles.MISRA_CHAPU));
    assertEquals(five, smallest(rounds, Cycles.KHANDA_CHAPU));
    assertEquals(three, smallest(rounds, Cycles.THREE));
    assertEquals(six, smallest(rounds, Cycles.RUPAKA));
  }

  @Test
  void everyLandingIsAMultipleOfTheSmallest() {
    FitResult result =
        FitSearch.search(
            FitProblem.of(Cycles.ADI, RoundPlan.of(4, 4, 5), TO_500, Ratio.ZERO, Ratio.ZERO), 100);
    assertEquals(
        List.of(80, 160, 240, 320, 400, 480),
        result.answers().stream().map(FitAnswer::matras).toList());
    assertEquals(6, result.count());
    assertEquals(Ratio.of(7), result.answers().get(0).avartanas());
    FitAnswer whole = result.answers().get(1);
    assertTrue(
        whole.performance().spans().stream().allMatch(span -> span.beats().dividedBy(8).isWhole()),
        "160 makes every round a whole number of avartanas");
    assertEquals(Ratio.of(14), whole.avartanas());
  }

  @ParameterizedTest
  @CsvSource({
    "10, 7, 2, 9/2, 7",
    "20, 14, 3, 8, 5",
    "30, 21, 4, 7/2, 3",
    "40, 28, 5, 7, 1",
    "60, 42, 7, 6, 5",
    "70, 49, 8, 3/2, 3",
    "80, 56, 1, 5, 1"
  })
  void startsThatLandOnSamamIn445(
      int matras, int beats, String start, String second, String third) {
    FitProblem problem =
        new FitProblem(
            Cycles.ADI,
            List.of(RoundPlan.of(4, 4, 5)),
            WholeRange.only(matras),
            WholeRange.only(0),
            new AskedPlaces.AnyStart(),
            AskedPlaces.at(Ratio.ZERO));
    FitResult result = FitSearch.search(problem, 10);
    assertEquals(1, result.count());
    FitAnswer answer = result.answers().get(0);
    assertEquals(Ratio.of(beats), answer.beats());
    List<String> beatsOfRounds =
        answer.performance().rounds().stream()
            .map(Span::startBeat)
            .map(beat -> Cycles.ADI.placeOf(beat).plus(Ratio.ONE).toString())
            .toList();
    assertEquals(List.of(start, second, third), beatsOfRounds);
    assertEquals(
        Ratio.of(matras, 10).modulo(Ratio.of(8)),
        answer.start(),
        "the start beat is N/10 + 1 counted round the eight beats");
  }

  @Test
  void oddMultiplesOfFiveStartInsideABeatAndChangeNadaiOnOne() {
    int seen = 0;
    for (int matras = 5; matras <= 195; matras += 10) {
      FitProblem problem =
          new FitProblem(
              Cycles.ADI,
              List.of(RoundPlan.of(4, 4, 5)),
              WholeRange.only(matras),
              WholeRange.only(0),
              new AskedPlaces.AnyStart(),
              AskedPlaces.at(Ratio.ZERO));
      FitAnswer answer = FitSearch.search(problem, 1).answers().get(0);
      assertEquals(2, answer.start().den());
      assertEquals(List.of(), answer.changesInsideABeat());
      seen++;
    }
    assertEquals(20, seen);
  }

  /** In seven beats 70 changes on samam, 10 on beat 6; in adi 80 does, and 10 begins on a beat. */
  @Test
  void whatAPerformerWouldUseComesFirst() {
    WholeRange upTo80 = new WholeRange(1, 80);
    List<FitAnswer> seven =
        FitSearch.search(
                FitProblem.of(
                    Cycles.MISRA_CHAPU, RoundPlan.of(4, 4, 5), upTo80, Ratio.ZERO, Ratio.ZERO),
                100)
            .answers();
    assertEquals(
        List.of(70, 10, 20, 30, 40, 50, 60, 80), seven.stream().map(FitAnswer::matras).toList());
    FitProblem anywhere =
        new FitProblem(
            Cycles.ADI,
            List.of(RoundPlan.of(4, 4, 5)),
            upTo80,
            WholeRange.only(0),
            new AskedPlaces.AnyStart(),
            new AskedPlaces.AnyLanding());
    List<FitAnswer> all = FitSearch.search(anywhere, Integer.MAX_VALUE).answers();
    List<Integer> grades = all.stream().map(FitAnswer::grade).toList();
    assertEquals(grades.stream().sorted().toList(), grades);
    assertEquals(0, grades.get(0));
    assertTrue(all.get(all.size() - 1).isHardlyPlayable());
    for (FitAnswer answer : all) {
      assertEquals(!answer.roundsOffTheClaps().isEmpty(), answer.isHardlyPlayable());
      boolean onBeats = answer.start().isWhole() && answer.eduppu().isWhole();
      boolean onSamam =
          Cycles.ADI.placeOf(answer.performance().rounds().get(2).startBeat()).signum() == 0;
      assertEquals(onBeats && onSamam, answer.grade() == 0, answer::toString);
    }
    assertEquals(
        FitSearch.search(anywhere, 7).answers(), all.subList(0, 7), "cut short, the best stay");
  }

  @Test
  void aListCutShortStillCountsEverything() {
    FitProblem problem =
        FitProblem.of(
            Cycles.ADI, RoundPlan.of(4, 4, 4), new WholeRange(1, 320), Ratio.ZERO, Ratio.ZERO);
    FitResult result = FitSearch.search(problem, 3);
    assertEquals(3, result.answers().size());
    assertEquals(10, result.count());
    assertEquals(7, result.more());
  }

  @Test
  void openRoundsTryEveryNadai() {
    FitProblem problem =
        new FitProblem(
            Cycles.ADI,
            RoundPlanReader.read("4-4-?"),
            WholeRange.only(48),
            WholeRange.only(0),
            AskedPlaces.at(Ratio.ZERO),
            AskedPlaces.at(Ratio.ZERO));
    FitResult result = FitSearch.search(problem, 10);
    assertEquals(
        List.of("4-4-3", "4-4-6"),
        result.answers().stream().map(answer -> answer.plan().toString()).toList());
  }

  private static int smallest(RoundPlan plan, Avartana avartana) {
    FitProblem problem = FitProblem.of(avartana, plan, TO_500, Ratio.ZERO, Ratio.ZERO);
    return FitSearch.search(problem, Integer.MAX_VALUE).answers().stream()
        .mapToInt(FitAnswer::matras)
        .min()
        .orElseThrow();
  }
}
