package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

class BreathTimelineTest {

  @Test
  void everyBreathIsAnEventAndNothingSoundsThrough() {
    int inhalations = 0;
    int cut = 0;
    for (long seed = 0; seed < 100; seed++) {
      Performance performance = Performance.of(Pieces.random(seed));
      BreathPlan plan = BreathPlanner.plan(performance, BreathSettings.study());
      Timeline score = ScoreTimeline.of(performance, 1);
      List<Event> plain = all(score);
      List<Event> breathing = all(new BreathTimeline(score, plan));
      assertEquals(plain.size() + plan.breaths().size(), breathing.size());
      Ratio soundEnd = score.originBeat();
      Ratio before = score.originBeat();
      for (Event event : breathing) {
        assertTrue(event.beat().compareTo(before) >= 0, "in order, seed " + seed);
        before = event.beat();
        if (event instanceof Event.SolluSaid said) {
          soundEnd = said.beat().plus(said.beats());
          assertTrue(said.spoken().ownBeats().compareTo(said.beats()) <= 0);
          cut += plain.contains(said) ? 0 : 1;
        } else if (event instanceof Event.Inhale inhale) {
          assertTrue(soundEnd.compareTo(inhale.beat()) <= 0, "seed " + seed);
          inhalations++;
        }
      }
    }
    assertTrue(inhalations > 100 && cut > 50, inhalations + " breaths, " + cut + " sollus cut");
  }

  @Test
  void whatIsNotABreathStaysAsItWas() {
    Performance performance =
        Performance.of(new Pieces().phrase("Song", "ta-ka tom , . .").say("Song", 3, 4).at(60));
    BreathPlan plan = BreathPlanner.plan(performance, BreathSettings.study());
    Timeline score = ScoreTimeline.of(performance, 1);
    assertTrue(plan.breaths().isEmpty(), "short enough for one breath");
    assertEquals(all(score), all(new BreathTimeline(score, plan)));
  }

  private static List<Event> all(Timeline timeline) {
    List<Event> events = new ArrayList<>();
    timeline.forEach(events::add);
    return events;
  }
}
