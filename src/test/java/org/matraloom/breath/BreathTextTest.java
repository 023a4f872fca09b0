package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;

class BreathTextTest {

  private static final Composition SONG =
      new Pieces()
          .phrase("Drip", "ta-ka-di-mi ".repeat(7) + "tom , . .")
          .phrase("Song", "Drip")
          .say("Song", 2, 4)
          .at(60);

  @Test
  void marksStandAboveTheSignInWhichTheAirIsTaken() {
    String text = BreathText.of(plan(SONG), List.of(), false, UnaryOperator.identity());
    assertEquals(
        """
        Ferry Song, 60 beats a minute: 1 breath; longest stretch 7.5 s and 29 sollus \
        (limits 8.0 s and 40 sollus)
        V = full breath, 600 ms or more; v = catch breath, from 250 ms; breathe in before \
        the first sollu

        Round 1, Song, chatusra nadai (4), from samam
        ta ka di mi ta ka di mi ta ka di mi ta ka di mi
                                                  V
        ta ka di mi ta ka di mi ta ka di mi tom , . .
          V after the tom on beat 8: 0.60 s for air, its karvai is cut by 0.10 s; then 7.5 s and 29 sollus

        Round 2, Song, chatusra nadai (4), from samam
        ta ka di mi ta ka di mi ta ka di mi ta ka di mi
        ta ka di mi ta ka di mi ta ka di mi tom , . .

        """,
        text.substring(0, text.indexOf("Breathe quietly")));
  }

  /** 31 sollus in five take less time than 29 in four: the longest is not the fullest. */
  @Test
  void theFullestStretchIsNamedBesideTheLongest() {
    Composition turning =
        new Pieces()
            .phrase("Drip", "ta-ka-di-mi ".repeat(7) + "tom , . .")
            .phrase("Drop", "ta-ka-ta-ki-ta ".repeat(6) + "tom , . . .")
            .say("Drip", 1, 4)
            .say("Drop", 1, 5)
            .at(60);
    String head =
        BreathText.of(plan(turning), List.of(), false, UnaryOperator.identity())
            .lines()
            .findFirst()
            .orElseThrow();
    assertTrue(head.contains("longest stretch 7.4 s and 29 sollus, fullest "), head);
    assertTrue(head.contains(" and 31 sollus (limits"), head);
  }

  @Test
  void everyBreathHasItsMarkAndItsLine() {
    int breaths = 0;
    for (long seed = 0; seed < 200; seed++) {
      BreathPlan plan = plan(Pieces.random(seed));
      String text = BreathText.of(plan, List.of(), false, UnaryOperator.identity());
      long marks =
          text.lines()
              .filter(line -> line.matches("[ Vv]+"))
              .mapToLong(line -> line.chars().filter(sign -> sign != ' ').count())
              .sum();
      long lines = text.lines().filter(line -> line.matches("  [Vv] after the .*")).count();
      assertEquals(plan.breaths().size(), marks, text);
      assertEquals(plan.breaths().size(), lines, text);
      breaths += plan.breaths().size();
    }
    assertTrue(breaths > 300, "breaths were seen: " + breaths);
  }

  @Test
  void theReminderToRestComesAfterFifteenMinutesOfVoice() {
    Composition longSong =
        new Pieces().phrase("Drip", "ta-ka-di-mi tom , . .").say("Drip", 900, 4).at(60);
    assertTrue(
        BreathText.of(plan(longSong), List.of(), false, UnaryOperator.identity())
            .contains("more than 15 minutes of voice"));
    assertFalse(
        BreathText.of(plan(SONG), List.of(), false, UnaryOperator.identity())
            .contains("minutes of voice"));
    assertTrue(
        BreathText.of(plan(SONG), List.of(), false, UnaryOperator.identity())
            .contains("not medical advice"));
  }

  private static BreathPlan plan(Composition piece) {
    return BreathPlanner.plan(Performance.of(piece), BreathSettings.study());
  }
}
