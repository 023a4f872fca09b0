package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/** Sentences of the page on breathing, each against a piece worked out by hand. */
class BreathPageTest {

  private static final String JOIN =
      "tala adi\ntempo 40\n"
          + "Song = . . . takadimi takadimi takadimi takadimi takadimi\n"
          + "perform\n  Song x2 nadai 3\n";

  private static BreathPlan plan(String score, BreathSettings settings) {
    Performance performance =
        Performance.of(
            ScoreReader.read(score, "page.loom", Lexicon.standard()).composition().orElseThrow());
    BreathPlan plan = BreathPlanner.plan(performance, settings);
    assertFalse(plan.breaths().isEmpty(), "there are breaths");
    return plan;
  }

  @Test
  void withWholeKarvaisTheSilenceAfterAJoinIsUsedAndNothingIsCut() {
    List<Breath> breaths = plan(JOIN, BreathSettings.study().withCutKarvai(false)).breaths();
    breaths.forEach(breath -> assertEquals(Ratio.ZERO, breath.air().cutBeats(), breath.toString()));
    // By hand: 23 matras of a third of a beat, then three silent ones, one beat.
    assertEquals(
        List.of(Ratio.ONE),
        breaths.stream()
            .filter(breath -> breath.startBeat().equals(Ratio.of(23, 3)))
            .map(breath -> breath.air().beats())
            .toList());
  }

  @Test
  void theLastSolluOfARoundMayBeCutToHalfItsMatra() {
    List<Breath> cut =
        plan(JOIN, BreathSettings.study()).breaths().stream()
            .filter(breath -> breath.air().cutBeats().signum() > 0)
            .toList();
    assertEquals(1, cut.size());
    // By hand: half a matra of a third of a beat.
    assertEquals(Ratio.of(1, 6), cut.get(0).air().cutBeats());
    assertEquals(Breath.Source.SOLLU, cut.get(0).air().source());
  }

  @Test
  void aSoundThatRingsOnBelongsToTheLastStretchOfThePiece() {
    String score =
        "tala adi\ntempo 60\n"
            + "Song = takadimi takadimi tom , , , takadimi takadimi tom ; ; ; ,\n"
            + "perform\n  Song nadai 4\n";
    BreathPlan plan = plan(score, BreathSettings.study());
    BreathStretch last = plan.stretches().get(plan.stretches().size() - 1);
    // By hand: from beat 3 on, 8 sollus of a quarter of a second and a tom of 8: 4 s.
    assertEquals(Ratio.of(4), last.seconds());
  }

  @Test
  void freeAirIsTakenThoughFewerBreathsWouldDo() {
    String score =
        "tala adi\ntempo 60\n"
            + "Line = takadimi takadimi tom , , ,\n"
            + "Song = Line Line Line Line\n"
            + "perform\n  Song nadai 4\n";
    int usual = plan(score, BreathSettings.study()).breaths().size();
    int fewest = plan(score, BreathSettings.study().by(BreathSettings.Way.FEWEST)).breaths().size();
    assertTrue(fewest < usual, fewest + " breaths where " + usual + " are usual");
    // By hand: 12 s in all and at most 8 on one breath, so one breath does.
    assertEquals(1, fewest);
  }
}
