package org.matraloom.fit;

import java.util.List;
import org.matraloom.time.Ratio;

/**
 * On what grid the end of a plan can move, and whether the wished landing lies on it.
 *
 * <p>Every matra more in the phrase moves the end by one fixed distance, and so does every matra of
 * an open wait. Going round and round the cycle, the end can fall on every multiple of the greatest
 * common measure of these distances and of the cycle, and nowhere else.
 *
 * @param stepBeats the distance between neighbouring places that can be reached, in beats
 * @param distanceBeats how far the end must still move, in beats after the place where it falls
 *     before anything is added
 */
public record LandingGrid(Ratio stepBeats, Ratio distanceBeats) {

  /**
   * The grid of one plan. An open start or landing is taken from samam, and moves the end by its
   * own parts of a beat.
   *
   * @param problem gives the cycle, the places, and says whether length and wait are open; a length
   *     or wait that is not open is taken as given
   * @param plan the rounds
   * @return the grid
   */
  public static LandingGrid of(FitProblem problem, RoundPlan plan) {
    Ratio cycle = Ratio.of(problem.avartana().beats());
    List<Ratio> starts = problem.starts().of(plan, problem.avartana());
    List<Ratio> eduppus = problem.eduppus().of(plan, problem.avartana());
    Ratio step = cycle;
    Ratio distance = eduppus.get(0).minus(starts.get(0)).minus(plan.waitBeats());
    for (List<Ratio> places : List.of(starts, eduppus)) {
      for (Ratio place : places) {
        step = commonMeasure(step, place.minus(places.get(0)).modulo(cycle));
      }
    }
    if (problem.matras().isFixed()) {
      distance = distance.minus(plan.beatsPerMatra().times(problem.matras().low()));
    } else {
      step = commonMeasure(step, plan.beatsPerMatra());
    }
    if (plan.hasOpenWait()) {
      step = commonMeasure(step, plan.beatsPerWaitMatra());
    }
    return new LandingGrid(step, distance.modulo(cycle));
  }

  /**
   * Whether some length, in range or not, lands there.
   *
   * @return true if the landing lies on the grid
   */
  public boolean isPossible() {
    return beyondStep().signum() == 0;
  }

  /**
   * How far the last reachable place before the wished one lies before it.
   *
   * @return beats, from 0 (exclusive unless the place can be reached) to the step
   */
  public Ratio beyondStep() {
    return distanceBeats.modulo(stepBeats);
  }

  private static Ratio commonMeasure(Ratio a, Ratio b) {
    Ratio x = a;
    Ratio y = b;
    while (y.signum() != 0) {
      Ratio rest = x.modulo(y);
      x = y;
      y = rest;
    }
    return x;
  }
}
