package org.matraloom.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.matraloom.kanakku.Landing;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;

/**
 * Finds every length, wait, start, eduppu and round plan that lands.
 *
 * <p>A plan lands when start + matras × (beats a matra) + waits equals the eduppu, whole avartanas
 * left aside. All of it is counted in the smallest part of a beat that measures every term, so that
 * the comparison is one of whole numbers; pairs of start and eduppu are looked up by the distance
 * between them.
 */
public final class FitSearch {

  private record Pair(Ratio start, Ratio eduppu) {}

  private record Counted(
      RoundPlan plan,
      long cycle,
      long perMatra,
      long perWaitMatra,
      long waits,
      Map<Long, List<Pair>> pairs) {}

  private FitSearch() {}

  /**
   * Searches the whole of a problem.
   *
   * @param problem what is asked
   * @param most how many answers to list; all are counted
   * @return the answers: shortest phrase first, then the shortest wait, then in the order of the
   *     plans, starts and eduppus given
   */
  public static FitResult search(FitProblem problem, int most) {
    List<Counted> plans = problem.plans().stream().map(plan -> counted(plan, problem)).toList();
    List<FitAnswer> answers = new ArrayList<>();
    long count = 0;
    for (int matras = problem.matras().low(); matras <= problem.matras().high(); matras++) {
      for (int wait = problem.waits().low(); wait <= problem.waits().high(); wait++) {
        for (Counted plan : plans) {
          if (!plan.plan().hasOpenWait() && wait > problem.waits().low()) {
            continue;
          }
          long beats = matras * plan.perMatra() + wait * plan.perWaitMatra() + plan.waits();
          List<Pair> pairs =
              plan.pairs().getOrDefault(Math.floorMod(beats, plan.cycle()), List.of());
          count += pairs.size();
          for (Pair pair : pairs.subList(0, Math.min(pairs.size(), most - answers.size()))) {
            answers.add(tried(problem, plan.plan(), matras, wait, pair));
          }
        }
      }
    }
    return new FitResult(answers, count);
  }

  private static FitAnswer tried(
      FitProblem problem, RoundPlan plan, int matras, int wait, Pair pair) {
    int waited = plan.hasOpenWait() ? wait : 0;
    Performance performance =
        TriedAnswer.of(problem.avartana(), plan, matras, waited, pair.start(), pair.eduppu());
    if (!Landing.of(performance).lands()) {
      throw new IllegalStateException(
          "the sum and the trial disagree for " + matras + " matras in " + plan);
    }
    return new FitAnswer(plan, matras, waited, pair.start(), pair.eduppu(), performance);
  }

  private static Counted counted(RoundPlan plan, FitProblem problem) {
    Ratio perMatra = plan.beatsPerMatra();
    Ratio perWaitMatra = plan.beatsPerWaitMatra();
    Ratio waits = plan.waitBeats();
    long parts =
        Stream.of(
                Stream.of(perMatra, perWaitMatra, waits),
                problem.starts().stream(),
                problem.eduppus().stream())
            .flatMap(terms -> terms)
            .mapToLong(Ratio::den)
            .reduce(1, FitSearch::leastCommonMultiple);
    long cycle = parts * problem.avartana().beats();
    Map<Long, List<Pair>> pairs = new HashMap<>();
    for (Ratio start : problem.starts()) {
      for (Ratio eduppu : problem.eduppus()) {
        long distance = Math.floorMod(inParts(eduppu.minus(start), parts), cycle);
        pairs.computeIfAbsent(distance, key -> new ArrayList<>()).add(new Pair(start, eduppu));
      }
    }
    return new Counted(
        plan,
        cycle,
        inParts(perMatra, parts),
        inParts(perWaitMatra, parts),
        inParts(waits, parts),
        pairs);
  }

  private static long inParts(Ratio beats, long parts) {
    return Math.multiplyExact(beats.num(), parts / beats.den());
  }

  private static long leastCommonMultiple(long a, long b) {
    long x = a;
    long y = b;
    while (y != 0) {
      long rest = x % y;
      x = y;
      y = rest;
    }
    return Math.multiplyExact(a / x, b);
  }
}
