package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

class BreathPlannerTest {

  private static final BreathSettings STUDY = BreathSettings.study();

  /**
   * What rings at the end is a part of the last stretch: 1 + 8 matras of 250 ms after 4 of them.
   */
  @Test
  void theLastSolluRingsInTheLastStretch() {
    Composition song =
        new Pieces().phrase("Song", "ta-ka-di-mi tom ; ; ; ;").say("Song", 1, 4).at(60);
    BreathPlan plan = BreathPlanner.plan(Performance.of(song), STUDY);
    assertEquals(Ratio.of(13, 4), plan.stretches().get(0).seconds());
  }

  @Test
  void noPlanBreaksALimitAtAnyTempo() {
    int plans = 0;
    for (int tempo = 40; tempo <= 110; tempo++) {
      for (long seed = 0; seed < 20; seed++) {
        for (BreathSettings settings : List.of(STUDY, BreathSettings.concert())) {
          Performance performance = Performance.of(Pieces.random(seed).at(Tempo.of(tempo)));
          BreathPlan plan = BreathPlanner.plan(performance, settings);
          plan.breaths()
              .forEach(breath -> assertTrue(breath.seconds().compareTo(Ratio.of(1, 4)) >= 0));
          if (plan.isPossible()) {
            plans++;
            plan.stretches()
                .forEach(
                    stretch -> {
                      assertTrue(stretch.seconds().compareTo(settings.longestSeconds()) <= 0);
                      assertTrue(stretch.sollus() <= 40);
                    });
          }
          assertEquals(plan.breaths().size() + 1, plan.stretches().size());
        }
      }
    }
    assertTrue(plans > 1_000, "plans were made: " + plans);
  }

  /** At 60 a matra is 250 ms in four, just long enough, and 200 ms in five, too short. */
  @Test
  void thePlansForFourAndForFiveDifferWhereTheyMust() {
    Composition song =
        new Pieces()
            .phrase("Drip", "ta-ka-di-mi ".repeat(6))
            .phrase("Song", "Drip . Drip . . .")
            .say("Song", 1, 4)
            .say("Song", 1, 5)
            .at(60);
    BreathPlan plan = BreathPlanner.plan(Performance.of(song), STUDY);
    assertEquals(
        List.of(1),
        plan.breaths().stream().map(Breath::round).filter(r -> r == 1).distinct().toList());
    assertTrue(
        plan.breaths().stream().anyMatch(b -> b.round() == 1 && b.beats().equals(Ratio.of(1, 4))));
    assertTrue(plan.breaths().stream().noneMatch(breath -> breath.round() == 2));
    assertEquals(2, plan.tooLong().get(0).round(), "48 sollus in five and no rest between them");
    BreathPlan slower = BreathPlanner.plan(Performance.of(song.at(Tempo.of(48))), STUDY);
    assertTrue(slower.breaths().stream().anyMatch(breath -> breath.round() == 2), "250 ms again");
  }
}
