package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.matraloom.Unrolled;
import org.matraloom.breath.Breath;
import org.matraloom.breath.BreathPlanner;
import org.matraloom.breath.BreathSettings;
import org.matraloom.breath.BreathTimeline;
import org.matraloom.live.Rivers;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.time.Tempo;

/** What the live screen reads out beat by beat. */
class BeatSheetTest {

  private static final BreathSettings SPARSE = BreathSettings.concert().withCutKarvai(false);

  @Test
  void theScreenNamesTheSollusThatTheScoreSaysAndBreathesWhereThePlanDoes() {
    int breaths = 0;
    for (Composition composition : Unrolled.scores().subList(0, 200)) {
      Performance performance = Performance.of(composition);
      Timeline score = ScoreTimeline.of(performance, 0);
      List<Breath> planned = BreathPlanner.plan(performance, SPARSE).breaths();
      Map<Long, List<String>> expected = new TreeMap<>();
      for (Unrolled.Piece piece : Unrolled.of(performance)) {
        if (!piece.name().equals(".")) {
          at(expected, piece.beat().floor()).add(piece.name());
        }
      }
      BeatSheet sheet = BeatSheet.of(score, composition.tempo(), SPARSE);
      Map<Long, List<String>> shown = new TreeMap<>();
      List<Long> breathed = new ArrayList<>();
      long end = performance.endBeat().ceil();
      for (long beat = performance.startBeat().floor(); beat <= end; beat++) {
        for (String word : sheet.at(beat).words().split(" ")) {
          if (word.equals("V") || word.equals("v")) {
            breathed.add(beat);
          } else if (!word.isEmpty() && !word.equals(",") && !word.equals(".")) {
            at(shown, beat).add(word);
          }
        }
      }
      assertEquals(expected, shown);
      assertEquals(planned.stream().map(breath -> breath.startBeat().floor()).toList(), breathed);
      breaths += breathed.size();
    }
    assertTrue(breaths > 100, "breaths were shown: " + breaths);
  }

  @Test
  void breathsThatAreHeardAreShownWhereTheyAreHeardAtEveryTempo() {
    Performance performance = Rivers.timeline(Tempo.of(60), 0).performance();
    Timeline heard =
        new BreathTimeline(
            ScoreTimeline.of(performance, 0), BreathPlanner.plan(performance, SPARSE));
    BeatSheet slow = BeatSheet.of(heard, Tempo.of(60), BreathSettings.study());
    BeatSheet quick = BeatSheet.of(heard, Tempo.of(240), BreathSettings.study());
    for (long beat = 0; beat < performance.endBeat().ceil(); beat++) {
      assertEquals(slow.at(beat), quick.at(beat));
    }
  }

  private static List<String> at(Map<Long, List<String>> words, long beat) {
    return words.computeIfAbsent(beat, any -> new ArrayList<>());
  }
}
