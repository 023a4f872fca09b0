package org.matraloom.fit;

import java.util.List;
import org.matraloom.score.Avartana;
import org.matraloom.time.Ratio;

/**
 * What is asked of a fit: everything that is known, and for the rest what may be tried.
 *
 * @param avartana the cycle
 * @param plans the round plans to try, at least one
 * @param matras the lengths of the phrase to try, from 1
 * @param waits the lengths to try for open waits, in matras
 * @param starts the places to start from
 * @param eduppus the places to land on
 */
public record FitProblem(
    Avartana avartana,
    List<RoundPlan> plans,
    WholeRange matras,
    WholeRange waits,
    AskedPlaces starts,
    AskedPlaces eduppus) {

  private static final long MOST_TRIES = 100_000_000;

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if it is empty, a length is 0, or there is too much to try
   */
  public FitProblem {
    plans = List.copyOf(plans);
    if (plans.isEmpty()) {
      throw new IllegalArgumentException("a fit needs a round plan to try");
    }
    if (matras.low() < 1) {
      throw new IllegalArgumentException("a phrase has at least 1 matra, given " + matras.low());
    }
    long tries = 0;
    for (RoundPlan plan : plans) {
      long places = Math.min(starts.of(plan, avartana).size(), eduppus.of(plan, avartana).size());
      tries += places * matras.size() * (plan.hasOpenWait() ? waits.size() : 1);
    }
    if (tries > MOST_TRIES) {
      throw new IllegalArgumentException(
          "there are more than "
              + MOST_TRIES
              + " lengths, waits, plans and places to try; narrow one of the ranges, or name the"
              + " start or the eduppu");
    }
  }

  /**
   * A problem with one plan, start and eduppu, and the length open.
   *
   * @param avartana the cycle
   * @param plan the rounds
   * @param matras the lengths to try
   * @param start where it starts, in beats after samam
   * @param eduppu where it lands, in beats after samam
   * @return the problem
   */
  public static FitProblem of(
      Avartana avartana, RoundPlan plan, WholeRange matras, Ratio start, Ratio eduppu) {
    return new FitProblem(
        avartana,
        List.of(plan),
        matras,
        WholeRange.only(0),
        AskedPlaces.at(start),
        AskedPlaces.at(eduppu));
  }

  FitProblem withPlans(List<RoundPlan> others, WholeRange waitRange) {
    return new FitProblem(avartana, others, matras, waitRange, starts, eduppus);
  }

  FitProblem withMatras(WholeRange range) {
    return new FitProblem(avartana, plans, range, waits, starts, eduppus);
  }

  FitProblem withPlaces(AskedPlaces newStarts, AskedPlaces newEduppus) {
    return new FitProblem(avartana, plans, matras, waits, newStarts, newEduppus);
  }
}
