package org.matraloom.fit;

import java.util.ArrayList;
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
 * @param starts the places to start from, in beats after samam, at least one
 * @param eduppus the places to land on, in beats after samam, at least one
 */
public record FitProblem(
    Avartana avartana,
    List<RoundPlan> plans,
    WholeRange matras,
    WholeRange waits,
    List<Ratio> starts,
    List<Ratio> eduppus) {

  private static final long MOST_PLACES = 1_000_000;
  private static final long MOST_TRIES = 20_000_000;

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if a list is empty, a length is 0, or there is too much to try
   */
  public FitProblem {
    plans = List.copyOf(plans);
    starts = List.copyOf(starts);
    eduppus = List.copyOf(eduppus);
    if (plans.isEmpty() || starts.isEmpty() || eduppus.isEmpty()) {
      throw new IllegalArgumentException("a fit needs a round plan, a start and an eduppu to try");
    }
    if (matras.low() < 1) {
      throw new IllegalArgumentException("a phrase has at least 1 matra, given " + matras.low());
    }
    if ((long) starts.size() * eduppus.size() > MOST_PLACES) {
      throw new IllegalArgumentException(
          "start and eduppu are both open in a very long cycle; name one of the two");
    }
    if (matras.size() * waits.size() * plans.size() > MOST_TRIES) {
      throw new IllegalArgumentException(
          "there are more than "
              + MOST_TRIES
              + " lengths, waits and plans to try; narrow one of the ranges");
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
        avartana, List.of(plan), matras, WholeRange.only(0), List.of(start), List.of(eduppu));
  }

  /**
   * Every place of a cycle that falls on a division of the beat.
   *
   * @param avartana the cycle
   * @param parts into how many parts a beat is divided, at least 1
   * @return places in beats after samam, ascending from 0
   */
  public static List<Ratio> everyPlace(Avartana avartana, int parts) {
    List<Ratio> places = new ArrayList<>();
    for (int part = 0; part < avartana.beats() * parts; part++) {
      places.add(Ratio.of(part, parts));
    }
    return List.copyOf(places);
  }

  FitProblem withPlans(List<RoundPlan> others, WholeRange waitRange) {
    return new FitProblem(avartana, others, matras, waitRange, starts, eduppus);
  }

  FitProblem withMatras(WholeRange range) {
    return new FitProblem(avartana, plans, range, waits, starts, eduppus);
  }

  FitProblem withPlaces(List<Ratio> newStarts, List<Ratio> newEduppus) {
    return new FitProblem(avartana, plans, matras, waits, newStarts, newEduppus);
  }
}
