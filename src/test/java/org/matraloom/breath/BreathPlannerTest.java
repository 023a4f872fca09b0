package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

class BreathPlannerTest {

  private static final BreathSettings STUDY = BreathSettings.study();

  /** Every choice of at most one breath a stop, its cost worked out afresh from the rules. */
  private static final class EveryChoice {
    private final BreathSettings settings;
    private final Voice voice;
    private final double bpm;
    private final List<Candidate> candidates;
    private final List<Candidate> taken = new ArrayList<>();
    private long best = Long.MAX_VALUE;
    private long choices;

    EveryChoice(Composition piece, BreathSettings settings) {
      this.settings = settings;
      this.voice = VoiceReader.read(Performance.of(piece)).orElseThrow();
      this.bpm = piece.tempo().beatsPerMinute().toDouble();
      this.candidates = Candidate.of(voice, piece.tempo(), settings);
      choose(0);
    }

    private void choose(int next) {
      if (next == candidates.size()) {
        choices++;
        best = Math.min(best, cost());
        return;
      }
      choose(next + 1);
      if (taken.isEmpty() || taken.get(taken.size() - 1).stop() != candidates.get(next).stop()) {
        taken.add(candidates.get(next));
        choose(next + 1);
        taken.remove(taken.size() - 1);
      }
    }

    private long cost() {
      long points = 0;
      double lackOfLast = 0;
      Ratio from = voice.begin().beat();
      long said = 0;
      for (int at = 0; at <= taken.size(); at++) {
        boolean last = at == taken.size();
        Ratio to = last ? voice.endBeat() : taken.get(at).breath().startBeat();
        long count = (last ? voice.sollus() : taken.get(at).solluCount()) - said;
        Ratio seconds = to.minus(from).times(60).dividedBy(Ratio.of((long) bpm));
        if (seconds.compareTo(settings.longestSeconds()) > 0 || count > settings.longestSollus()) {
          return Long.MAX_VALUE;
        }
        long load =
            Math.max(
                seconds.times(1000).dividedBy(settings.longestSeconds()).floor(),
                1000 * count / settings.longestSollus());
        points += 40 * load * load / 1_000_000;
        points += (long) (60 * load * lackOfLast) / 1_000_000;
        if (at > 0 && !last && seconds.compareTo(Ratio.of(2)) < 0) {
          points += 300;
        }
        if (!last) {
          Breath breath = taken.get(at).breath();
          points += 100 + (breath.endsPhrase() ? 0 : 60) + (breath.beforeChange() ? 1_000_000 : 0);
          points += breath.seconds().compareTo(Ratio.of(6, 10)) < 0 ? 15 : 0;
          if (breath.cutBeats().signum() > 0) {
            Ratio cutMs = breath.cutBeats().times(60_000).dividedBy(Ratio.of((long) bpm));
            points += 40 + cutMs.dividedBy(20).ceil();
          }
          lackOfLast =
              Math.max(0, 1000 - breath.seconds().times(1000).dividedBy(Ratio.of(6, 10)).floor());
          from = breath.endBeat();
          said = taken.get(at).solluCount();
        }
      }
      return points;
    }
  }

  @Test
  void agreesWithTryingEveryChoiceOnFiveHundredPieces() {
    int possible = 0;
    int impossible = 0;
    long choices = 0;
    for (long seed = 0; possible + impossible < 500; seed++) {
      Composition piece = Pieces.random(seed);
      Performance performance = Performance.of(piece);
      Voice voice = VoiceReader.read(performance).orElseThrow();
      if (Candidate.of(voice, piece.tempo(), STUDY).size() > 16) {
        continue;
      }
      EveryChoice every = new EveryChoice(piece, STUDY);
      choices += every.choices;
      BreathPlan plan = BreathPlanner.plan(performance, STUDY);
      assertEquals(every.best != Long.MAX_VALUE, plan.isPossible(), "seed " + seed);
      if (plan.isPossible()) {
        assertEquals(every.best, plan.cost(), "seed " + seed);
        possible++;
      } else {
        impossible++;
      }
    }
    assertTrue(possible > 200 && impossible > 20 && choices > 50_000);
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
