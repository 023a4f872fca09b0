package org.matraloom.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.matraloom.kanakku.Landing;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/**
 * Finds every length, wait, start, eduppu and round plan that lands.
 *
 * <p>A plan lands when start + matras × (beats a matra) + waits equals the eduppu, whole avartanas
 * left aside. All of it is counted in the smallest part of a beat that measures every term, so that
 * the comparison is one of whole numbers.
 */
public final class FitSearch {

  private record Found(
      int grade, int matras, int waited, int plan, Ratio start, Ratio eduppu, RoundPlan rounds) {}

  private static final Comparator<Found> BEST_FIRST =
      Comparator.comparingInt(Found::grade)
          .thenComparingInt(Found::matras)
          .thenComparingInt(Found::waited)
          .thenComparingInt(Found::plan)
          .thenComparing(Found::start)
          .thenComparing(Found::eduppu);

  private final FitProblem problem;
  private final int most;
  private final PriorityQueue<Found> best = new PriorityQueue<>(BEST_FIRST.reversed());
  private long count;

  private FitSearch(FitProblem problem, int most) {
    this.problem = problem;
    this.most = most;
  }

  /**
   * Searches the whole of a problem.
   *
   * @param problem what is asked
   * @param most how many answers to list; all are counted
   * @return the answers: first those that a performer would use, see {@link FitAnswer#grade()};
   *     among equals the shortest phrase, then the shortest wait, then in the order of the plans,
   *     starts and eduppus
   */
  public static FitResult search(FitProblem problem, int most) {
    FitSearch search = new FitSearch(problem, most);
    for (int plan = 0; plan < problem.plans().size(); plan++) {
      search.search(plan, new CountedPlan(problem.plans().get(plan), problem));
    }
    List<Found> found = new ArrayList<>(search.best);
    found.sort(BEST_FIRST);
    return new FitResult(found.stream().map(search::tried).toList(), search.count);
  }

  private void search(int index, CountedPlan plan) {
    WholeRange waits = plan.plan().hasOpenWait() ? problem.waits() : WholeRange.only(0);
    for (int matras = problem.matras().low(); matras <= problem.matras().high(); matras++) {
      for (int wait = waits.low(); wait <= waits.high(); wait++) {
        int length = matras;
        int waited = wait;
        plan.forEachLanding(
            length, waited, (start, eduppu) -> add(index, plan, length, waited, start, eduppu));
      }
    }
  }

  private void add(int index, CountedPlan plan, int matras, int wait, Ratio start, Ratio eduppu) {
    count++;
    int grade = plan.grade(matras, wait, start, eduppu);
    Found found = new Found(grade, matras, wait, index, start, eduppu, plan.plan());
    if (best.size() < most) {
      best.add(found);
    } else if (most > 0 && BEST_FIRST.compare(found, best.peek()) < 0) {
      best.poll();
      best.add(found);
    }
  }

  private FitAnswer tried(Found found) {
    Performance performance =
        TriedAnswer.of(
            problem.avartana(),
            found.rounds(),
            found.matras(),
            found.waited(),
            found.start(),
            found.eduppu());
    if (!Landing.of(performance).lands()) {
      throw new IllegalStateException(
          "the sum and the trial disagree for " + found.matras() + " matras in " + found.rounds());
    }
    return new FitAnswer(
        found.rounds(),
        found.matras(),
        found.waited(),
        found.start(),
        found.eduppu(),
        found.grade(),
        performance);
  }
}
