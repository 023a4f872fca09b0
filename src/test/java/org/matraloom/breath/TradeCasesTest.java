package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Spoken;

/**
 * Pieces with the answers that a teacher would give: common practice, without a source. An answer
 * counts the sollus of a round that are said before each breath of it.
 */
class TradeCasesTest {

  private static final BreathSettings STUDY = BreathSettings.study();

  /** 40 matras are 10 s at 60, too much for one breath: then every gap of the mora is used. */
  @Test
  void aMoraOfTwelves() {
    String mora = "Song = 12(2)12(2)12";
    assertEquals(List.of("1: 12 24"), plan(mora, "Song nadai 4", 60));
    assertEquals(List.of("1: 12 24"), plan(mora, "Song nadai 4", 72));
    assertEquals(List.of("1:"), plan(mora, "Song nadai 4", 90), "6.7 s are said on one breath");
    assertEquals(
        List.of("1: 12 24", "2: 12 24"), plan(mora, "Song x2 nadai 4", 66), "alike each round");
  }

  /** Gaps of 1.25 s at 48: air is free in all of them, between the moras too. */
  @Test
  void threeMorasOfTensWithLongGaps() {
    String moras =
        """
        Weir = 10(4)10(4)10
        Song = takadimi takajunu tom , , , Weir ; ; Weir ; ; Weir""";
    assertEquals(List.of("1: 9 19 29 39 49 59 69 79 89"), plan(moras, "Song nadai 4", 48));
    assertEquals(
        List.of("1: 9 19 29 39 49 59 69 79 89"),
        plan(
            "Song = takadimi takajunu tom , , , "
                + "10(4)10(4)10 ; ; 10(4)10(4)10 ; ; 10(4)10(4)10",
            "Song nadai 4",
            48),
        "written as groups");
  }

  private static final String GROWING =
      """
      Cloud    = takajunu tom ; ,
      Drizzle  = takajunu taka tom ; ,
      Shower   = takajunu takadimi tom ; ,
      Downpour = takajunu taka takadimi tom ; ,
      Entry    = takita taka tadiginatom
      Song     = Cloud Drizzle Shower Downpour  Entry , ; Entry , ; Entry""";

  /**
   * Three matras of karvai are 0.75 s in four at 60 and 0.60 s in five: free in both, so it is
   * breathed after every line and in every gap.
   */
  @Test
  void aGrowingKorvaiAtSixty() {
    String every = " 5 12 21 32 42 52";
    assertEquals(
        List.of("1:" + every, "2:" + every, "3:" + every),
        plan(GROWING, "Song x2 nadai 4\nSong nadai 5", 60));
  }

  /**
   * At 84 the karvais are 0.54 s and 0.43 s: nothing is free. A breath is in hand before the mora.
   * Its 30 sollus and the 32 before the next mora are too many for one; the gaps of the mora would
   * leave 42, so there is one after the first line, the only other one that is needed.
   */
  @Test
  void aGrowingKorvaiAtEightyFour() {
    assertEquals(
        List.of("1: 5 32", "2: 5 32", "3: 5 32"),
        plan(GROWING, "Song x2 nadai 4\nSong nadai 5", 84));
  }

  /** At 110 they are 0.41 s and 0.33 s; the limit of 40 sollus is the same at every tempo. */
  @Test
  void aGrowingKorvaiAtAHundredAndTen() {
    assertEquals(
        List.of("1: 5 32", "2: 5 32", "3: 5 32"),
        plan(GROWING, "Song x2 nadai 4\nSong nadai 5", 110));
  }

  /** Nowhere to breathe: the plan takes nothing inside a word and says that it cannot be said. */
  @Test
  void aPieceWithoutAnyRest() {
    BreathPlan plan = planned("Song = (takadimi takajunu) x4", "Song x2 nadai 4", 90, STUDY);
    assertTrue(plan.breaths().isEmpty());
    assertFalse(plan.isPossible());
    assertEquals(64, plan.tooLong().get(0).sollus());
  }

  /** Adi in two kalai, slow: long sounds inside a line are joints too, and there air is free. */
  @Test
  void twoKalai() {
    String slow =
        """
        Pool   = takadimi dhim ; , takajunu dhim ; ,
        Ripple = takadimi taka ta , digina tom
        Song   = Pool Pool Ripple ; ; Ripple ; ; Ripple""";
    assertEquals(List.of("1: 5 10 15 20 31 42"), plan("kalai 2", slow, "Song nadai 4", 56, STUDY));
  }

  /** Seven beats: four rows of sevens, then a mora with gaps of one matra, too short for air. */
  @Test
  void misraChapu() {
    String rows =
        """
        Oar  = takita taka dhim ,
        Pull = takadimi takita
        Rope = takadi ginatom
        Song = Oar Oar Pull Pull Oar Oar Pull Pull Rope , Rope , Rope""";
    assertEquals(List.of("1: 6 12 32 38", "2: 6 12 32 38"), plan(rows, "Song x2 nadai 4", 84));
  }

  /**
   * A karvai that ends a line, and five matras later one inside ta , di , gi na tom: the breath
   * belongs to the first, though the second would split the time more evenly.
   */
  @Test
  void neverInsideAPhraseAfterALineThatRings() {
    String delta =
        """
        Silt  = takadimi takajunu takita tadiginatom
        Mouth = takadimi tadiginatom , ,
        Delta = ta , di , gi , na tom
        Song  = Silt Mouth Delta Silt Mouth Delta""";
    assertEquals(List.of("1: 25 55"), plan(delta, "Song nadai 4", 72));
    assertEquals(List.of("1: 25 55", "2: 25 55"), plan(delta, "Song x2 nadai 4", 72));
  }

  /** 0.54 s after each line at 84 is not free; what the limit asks for is alike in all rounds. */
  @Test
  void roundsInTheSameNadaiAreAlike() {
    String puddle =
        """
        Puddle = takadimi dhim ; takita tom ;
        Frog   = takita takadimi tom ;
        Song   = Puddle Frog Frog Puddle""";
    List<String> rounds = plan(puddle, "Song x3 nadai 4", 84);
    assertEquals(rounds.get(0).substring(3), rounds.get(1).substring(3));
  }

  /** A mora that grows, 5 6 7 with gaps of 2: all gaps or none. */
  @Test
  void aMoraThatGrows() {
    String growing =
        """
        Bank = takadimi takajunu takadimi takajunu
        Song = Bank 5(2)6(2)7""";
    assertEquals(List.of("1: 21 26"), plan(growing, "Song nadai 4", 50));
    assertEquals(List.of("1:"), plan(growing, "Song nadai 4", 80), "7.1 s and 34 sollus");
  }

  /** Silence of 2 matras at 66 in the beat before the change is left; the line before serves. */
  @Test
  void notInTheBeatBeforeTheNadaiChanges() {
    String turning =
        """
        Reed = takadimi takajunu takadimi tom ,
        Song = Reed Reed taka tom ,""";
    BreathPlan plan = planned(turning, "Song nadai 4\nSong nadai 5", 66, STUDY);
    assertTrue(plan.isPossible());
    assertTrue(plan.breaths().stream().noneMatch(Breath::beforeChange));
  }

  /** Nothing is cut: only the silence serves, and no last sollu of a round is cut either. */
  @Test
  void wholeKarvais() {
    String rests =
        """
        Reed = takadimi takajunu tom , , ,
        Rush = takadimi takajunu tom . . .
        Song = Reed Rush Reed Rush""";
    BreathSettings whole = STUDY.withCutKarvai(false);
    BreathPlan plan = planned(rests, "Song x2 nadai 3", 50, whole);
    assertEquals(List.of("1: 18 36", "2: 18"), answer(plan), "the last one of all ends the piece");
    plan.breaths().forEach(breath -> assertEquals(0, breath.air().cutBeats().signum()));
  }

  private static List<String> plan(String phrases, String rounds, int tempo) {
    return plan("", phrases, rounds, tempo, STUDY);
  }

  private static List<String> plan(
      String head, String phrases, String rounds, int tempo, BreathSettings settings) {
    return answer(planned(head, phrases, rounds, tempo, settings));
  }

  private static BreathPlan planned(
      String phrases, String rounds, int tempo, BreathSettings settings) {
    return planned("", phrases, rounds, tempo, settings);
  }

  private static BreathPlan planned(
      String head, String phrases, String rounds, int tempo, BreathSettings settings) {
    String score =
        "tala adi\ntempo " + tempo + "\n" + head + "\n" + phrases + "\nperform\n" + rounds + "\n";
    return BreathPlanner.plan(
        Performance.of(
            ScoreReader.read(score, "case.loom", Lexicon.standard()).composition().orElseThrow()),
        settings);
  }

  private static List<String> answer(BreathPlan plan) {
    List<StringBuilder> rounds = new ArrayList<>();
    List<Spoken> said = plan.performance().spoken().toList();
    int inRound = 0;
    for (Spoken spoken : said) {
      if (rounds.size() < spoken.round()) {
        rounds.add(new StringBuilder(spoken.round() + ":"));
        inRound = 0;
      }
      inRound++;
      boolean breath =
          plan.breaths().stream().anyMatch(each -> each.afterBeat().equals(spoken.beat()));
      rounds.get(rounds.size() - 1).append(breath ? " " + inRound : "");
    }
    return rounds.stream().map(StringBuilder::toString).toList();
  }
}
