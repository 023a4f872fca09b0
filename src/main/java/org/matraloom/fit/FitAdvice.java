package org.matraloom.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.Composition;
import org.matraloom.time.Ratio;

/**
 * A way out when nothing in the asked ranges lands: one thing is changed, the rest kept.
 *
 * @param change what is changed
 * @param answer how it then lands
 */
public record FitAdvice(Change change, FitAnswer answer) {

  /** What may be changed to land after all, in the order in which it is offered. */
  public enum Change {
    /** The nearest shorter phrase. */
    SHORTER,
    /** The nearest longer phrase. */
    LONGER,
    /** The nearest eduppu before the one asked for that can be reached. */
    EARLIER_EDUPPU,
    /** The nearest eduppu after the one asked for that can be reached. */
    LATER_EDUPPU,
    /** Start and land on the same place: eduppu to eduppu. */
    EDUPPU_TO_EDUPPU,
    /** The nearest other start on a quarter of a beat. */
    OTHER_START,
    /** The shortest wait before the last round. */
    WAIT,
    /** Another nadai for the last round. */
    LAST_NADAI
  }

  private static final int QUARTERS = 4;
  private static final int LONGEST = 2_000;
  private static final int AT_A_TIME = 32;
  private static final int MOST = 10_000;

  /**
   * The nearest things that work.
   *
   * @param problem a problem without an answer; its first plan, start and eduppu are the ones asked
   *     for
   * @return at most one answer for each change, in the order of {@link Change}; none if nothing of
   *     the kind lands
   */
  public static List<FitAdvice> forProblem(FitProblem problem) {
    List<FitAdvice> advice = new ArrayList<>();
    otherLengths(problem, advice);
    otherEduppus(problem, advice);
    Ratio eduppu = problem.eduppus().get(0);
    first(problem.withPlaces(List.of(eduppu), List.of(eduppu)))
        .ifPresent(answer -> advice.add(new FitAdvice(Change.EDUPPU_TO_EDUPPU, answer)));
    List<Ratio> starts = new ArrayList<>(FitProblem.everyPlace(problem.avartana(), QUARTERS));
    starts.removeAll(problem.starts());
    starts.remove(problem.avartana().placeOf(eduppu));
    starts.sort(Comparator.comparing(start -> distance(problem, start)));
    nearest(problem, starts, List.of(eduppu))
        .ifPresent(answer -> advice.add(new FitAdvice(Change.OTHER_START, answer)));
    RoundPlan plan = problem.plans().get(0);
    if (!plan.hasOpenWait() && plan.rounds().size() > 1) {
      WholeRange waits = new WholeRange(1, problem.avartana().beats() * Composition.HIGHEST_NADAI);
      shortestWait(problem.withPlans(List.of(plan.withWaitBeforeLast()), waits))
          .ifPresent(answer -> advice.add(new FitAdvice(Change.WAIT, answer)));
    }
    List<RoundPlan> others =
        RoundPlanReader.OPEN_NADAIS.stream()
            .map(nadai -> plan.endingIn(new RoundPlan.Part.Round(nadai, 1)))
            .filter(other -> !other.equals(plan))
            .toList();
    first(problem.withPlans(others, problem.waits()))
        .ifPresent(answer -> advice.add(new FitAdvice(Change.LAST_NADAI, answer)));
    return List.copyOf(advice);
  }

  private static void otherLengths(FitProblem problem, List<FitAdvice> advice) {
    WholeRange asked = problem.matras();
    List<FitAnswer> shorter = List.of();
    for (int high = asked.low() - 1; high >= 1 && shorter.isEmpty(); high -= AT_A_TIME) {
      WholeRange range = new WholeRange(Math.max(1, high - AT_A_TIME + 1), high);
      shorter = FitSearch.search(problem.withMatras(range), MOST).answers();
    }
    if (!shorter.isEmpty()) {
      advice.add(new FitAdvice(Change.SHORTER, shorter.get(shorter.size() - 1)));
    }
    int longest = Math.min(WholeRange.HIGHEST, asked.high() + LONGEST);
    if (longest > asked.high()) {
      first(problem.withMatras(new WholeRange(asked.high() + 1, longest)))
          .ifPresent(answer -> advice.add(new FitAdvice(Change.LONGER, answer)));
    }
  }

  private static void otherEduppus(FitProblem problem, List<FitAdvice> advice) {
    Ratio start = problem.starts().get(0);
    Ratio eduppu = problem.eduppus().get(0);
    LandingGrid reach = LandingGrid.of(problem, problem.plans().get(0), start, eduppu);
    if (reach.isPossible()) {
      return;
    }
    Ratio earlier = problem.avartana().placeOf(eduppu.minus(reach.beyondStep()));
    Ratio later =
        problem.avartana().placeOf(eduppu.minus(reach.beyondStep()).plus(reach.stepBeats()));
    first(problem.withPlaces(List.of(start), List.of(earlier)))
        .ifPresent(answer -> advice.add(new FitAdvice(Change.EARLIER_EDUPPU, answer)));
    if (later.equals(earlier)) {
      return;
    }
    first(problem.withPlaces(List.of(start), List.of(later)))
        .ifPresent(answer -> advice.add(new FitAdvice(Change.LATER_EDUPPU, answer)));
  }

  private static Optional<FitAnswer> first(FitProblem problem) {
    return FitSearch.search(problem, 1).answers().stream().findFirst();
  }

  private static Optional<FitAnswer> nearest(
      FitProblem problem, List<Ratio> starts, List<Ratio> eduppus) {
    return starts.stream()
        .map(start -> first(problem.withPlaces(List.of(start), eduppus)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<FitAnswer> shortestWait(FitProblem problem) {
    for (int wait = problem.waits().low(); wait <= problem.waits().high(); wait++) {
      Optional<FitAnswer> answer = first(problem.withPlans(problem.plans(), WholeRange.only(wait)));
      if (answer.isPresent()) {
        return answer;
      }
    }
    return Optional.empty();
  }

  private static Ratio distance(FitProblem problem, Ratio place) {
    Ratio cycle = Ratio.of(problem.avartana().beats());
    Ratio after = place.minus(problem.starts().get(0)).modulo(cycle);
    Ratio before = cycle.minus(after);
    return after.compareTo(before) < 0 ? after : before;
  }
}
