package org.matraloom.practice;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.matraloom.score.Composition;
import org.matraloom.score.Moment;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import org.matraloom.time.Ratio;

/**
 * One phrase of a score over and over, each time at the place of the tala where it is first said.
 */
public final class LoopDrill {

  private static final int MOST_LOOPS = 500;

  private LoopDrill() {}

  /** Where a phrase is said for the first time. */
  private record First(Ratio beat, int nadai, int kalam) {}

  /**
   * Loops a phrase; where it does not fill whole avartanas, the hand alone goes on until the place
   * where the loop began.
   *
   * @param composition the score
   * @param phrase the phrase
   * @param loops how often, 1 to 500
   * @return the drill
   * @throws IllegalArgumentException if the phrase is never said or the number is out of range
   */
  public static Composition of(Composition composition, String phrase, int loops) {
    Drill.requireRange("the number of loops", loops, 1, MOST_LOOPS);
    First first = first(composition, phrase);
    Ratio place = composition.avartana().placeOf(first.beat);
    List<Step> plan = new ArrayList<>();
    for (int time = 0; time < loops; time++) {
      plan.add(new Step.Say(phrase, 1, first.nadai, first.kalam));
      plan.add(new Step.Until(place));
    }
    return Drill.of(
        phrase + " in a loop",
        composition.avartana(),
        composition.tempo(),
        place,
        composition.phrases(),
        plan);
  }

  private static First first(Composition composition, String phrase) {
    Performance performance = Performance.of(composition);
    List<Span.Round> rounds = performance.rounds();
    Iterator<Moment> moments = performance.moments();
    while (moments.hasNext()) {
      Moment moment = moments.next();
      if (moment instanceof Moment.SpanStart start
          && start.span() instanceof Span.Round round
          && round.phrase().equals(phrase)) {
        return new First(round.startBeat(), round.nadai(), round.kalam());
      } else if (moment instanceof Moment.PhraseStart start && start.name().equals(phrase)) {
        Span.Round round = rounds.get(start.round() - 1);
        return new First(start.beat(), round.nadai(), round.kalam());
      }
    }
    throw new IllegalArgumentException(
        "the score never says " + phrase + "; its phrases are " + composition.phrases().keySet());
  }
}
