package org.matraloom.breath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

class FewestSearchTest {

  private static final BreathSettings FEWEST = BreathSettings.study().by(BreathSettings.Way.FEWEST);

  /** Every choice of at most one breath a stop, its cost worked out afresh from the rules. */
  private static final class EveryChoice {
    private final Voice voice;
    private final long bpm;
    private final Composition piece;
    private final List<Candidate> candidates;
    private final List<Candidate> taken = new ArrayList<>();
    private final List<Breath> breaths = new ArrayList<>();
    private long best = Long.MAX_VALUE;
    private long choices;

    EveryChoice(Composition piece) {
      this.piece = piece;
      this.voice = VoiceReader.read(Performance.of(piece)).orElseThrow();
      this.bpm = piece.tempo().beatsPerMinute().num();
      this.candidates = Candidate.of(voice, piece.tempo(), FEWEST);
      choose(0);
    }

    private void choose(int next) {
      if (next == candidates.size()) {
        choices++;
        best = Math.min(best, cost());
        return;
      }
      choose(next + 1);
      Candidate candidate = candidates.get(next);
      for (Ratio start : candidate.starts()) {
        taken.add(candidate);
        breaths.add(candidate.breath(start, piece.tempo(), FEWEST));
        choose(next + 1);
        taken.remove(taken.size() - 1);
        breaths.remove(breaths.size() - 1);
      }
    }

    private long cost() {
      long points = 0;
      double lackOfLast = 0;
      Ratio from = voice.begin().beat();
      long said = 0;
      for (int at = 0; at <= taken.size(); at++) {
        boolean last = at == taken.size();
        Ratio to = last ? voice.endBeat() : breaths.get(at).startBeat();
        long count = (last ? voice.sollus() : taken.get(at).stop().solluCount()) - said;
        Ratio seconds = to.minus(from).times(60).dividedBy(Ratio.of(bpm));
        if (seconds.compareTo(Ratio.of(8)) > 0 || count > 40) {
          return Long.MAX_VALUE;
        }
        long load = Math.max(seconds.times(1000).dividedBy(Ratio.of(8)).floor(), 1000 * count / 40);
        points += 40 * load * load / 1_000_000;
        points += (long) (60 * load * lackOfLast) / 1_000_000;
        if (at > 0 && !last && seconds.compareTo(Ratio.of(2)) < 0) {
          points += 300;
        }
        if (!last) {
          Breath breath = breaths.get(at);
          points += 100 + (breath.joint().endsPhrase() ? 0 : 60);
          points += breath.beforeChange() ? 1_000_000 : 0;
          points += breath.seconds().compareTo(Ratio.of(6, 10)) < 0 ? 15 : 0;
          if (breath.air().cutBeats().signum() > 0) {
            Ratio cutMs = breath.air().cutBeats().times(60_000).dividedBy(Ratio.of(bpm));
            points += 40 + cutMs.dividedBy(20).ceil();
          }
          lackOfLast =
              Math.max(0, 1000 - breath.seconds().times(1000).dividedBy(Ratio.of(6, 10)).floor());
          from = breath.endBeat();
          said = taken.get(at).stop().solluCount();
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
    for (long number = 0; possible + impossible < 500; number++) {
      Composition piece = Pieces.random(number);
      Performance performance = Performance.of(piece);
      Voice voice = VoiceReader.read(performance).orElseThrow();
      long ways =
          Candidate.of(voice, piece.tempo(), FEWEST).stream()
              .mapToLong(each -> each.starts().size() + 1)
              .reduce(1, (a, b) -> Math.min(10_000, a * b));
      if (ways > 2_000) {
        continue;
      }
      EveryChoice every = new EveryChoice(piece);
      choices += every.choices;
      BreathPlan plan = BreathPlanner.plan(performance, FEWEST);
      assertEquals(every.best != Long.MAX_VALUE, plan.isPossible(), "piece " + number);
      if (plan.isPossible()) {
        assertEquals(every.best, plan.cost().of(PlanTerm.UNEVEN), "piece " + number);
        possible++;
      } else {
        impossible++;
      }
    }
    assertTrue(possible > 200 && impossible > 20 && choices > 50_000);
  }
}
