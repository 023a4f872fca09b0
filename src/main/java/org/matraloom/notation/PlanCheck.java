package org.matraloom.notation;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.matraloom.score.Composition;
import org.matraloom.score.Length;
import org.matraloom.score.Performance;
import org.matraloom.score.Step;
import org.matraloom.score.TwoReciters;
import org.matraloom.time.Ratio;

/** Checks that a performance keeps the limits. */
final class PlanCheck {

  static final int MOST_SPANS = 10_000;
  private static final long MOST_SECONDS = Duration.ofHours(24).toSeconds();

  /** One line of the plan and where it stands. */
  record Line(Step step, Token token) {}

  private final List<Line> plan;
  private final Problems problems;

  PlanCheck(List<Line> plan, Problems problems) {
    this.plan = plan;
    this.problems = problems;
  }

  /** The steps alone. */
  List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (Line line : plan) {
      steps.add(line.step());
    }
    return Collections.unmodifiableList(steps);
  }

  /** Those of some phrases that the plan names. */
  Set<String> saidOf(Set<String> phrases) {
    Set<String> said = new LinkedHashSet<>();
    for (Line line : plan) {
      if (timed(line) instanceof Step.Say say && phrases.contains(say.phrase())) {
        said.add(say.phrase());
      }
    }
    return said;
  }

  /** Tells the first line at which the performance becomes too long. */
  void check(Composition composition, Map<String, Length> lengths) {
    long spans = 0;
    long steps = 0;
    for (Line line : plan) {
      if (timed(line) instanceof Step.Say say) {
        spans += say.times();
        steps += say.times() * lengths.get(say.phrase()).steps();
      } else {
        spans++;
      }
      if (spans > MOST_SPANS) {
        tooLong(line, "has more than " + grouped(MOST_SPANS) + " rounds and rests");
        return;
      } else if (steps > PhraseGraph.MOST_STEPS) {
        tooLong(line, "passes more than " + grouped(PhraseGraph.MOST_STEPS) + " sollus and marks");
        return;
      }
    }
    Ratio most = composition.tempo().beatsIn(Ratio.of(MOST_SECONDS));
    boolean second = problems.errors() == 0 && TwoReciters.in(composition);
    if (Performance.of(composition).beats().compareTo(most) > 0
        || (second
            && Performance.of(TwoReciters.of(composition).second()).beats().compareTo(most) > 0)) {
      tooLong(plan.get(plan.size() - 1), "lasts more than 24 hours at this tempo");
    }
  }

  /** What one of the reciters does in a line. */
  private static Step timed(Line line) {
    return line.step() instanceof Step.With with ? with.step() : line.step();
  }

  private void tooLong(Line line, String how) {
    problems.error(line.token(), "the performance " + how, "check the repeats and the rests");
  }

  private static String grouped(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }
}
