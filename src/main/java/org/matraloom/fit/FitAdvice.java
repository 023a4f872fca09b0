package org.matraloom.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
    /** The nearest eduppu before the one asked for that can be reached and played. */
    EARLIER_EDUPPU,
    /** The nearest eduppu after the one asked for that can be reached and played. */
    LATER_EDUPPU,
    /** Start and land on the same place: eduppu to eduppu. */
    EDUPPU_TO_EDUPPU,
    /** Another start: the easiest, and of those the nearest. */
    OTHER_START,
    /** The shortest wait before the last round. */
    WAIT,
    /** Another nadai for the last round. */
    LAST_NADAI
  }

  private static final int LONGEST = 2_000;
  private static final int AT_A_TIME = 32;
  private static final int MOST = 10_000;

  /**
   * The nearest things that work and can be played; where nothing of the kind can be played, the
   * nearest that works at all.
   *
   * @param problem a problem without an answer; its first plan is the one asked for
   * @return at most one answer for each change, in the order of {@link Change}; none if nothing of
   *     the kind lands; a place that was left open stays open
   */
  public static List<FitAdvice> forProblem(FitProblem problem) {
    List<FitAdvice> advice = new ArrayList<>();
    otherLength(problem, true).ifPresent(a -> advice.add(new FitAdvice(Change.SHORTER, a)));
    otherLength(problem, false).ifPresent(a -> advice.add(new FitAdvice(Change.LONGER, a)));
    if (problem.starts() instanceof AskedPlaces.Named starts
        && problem.eduppus() instanceof AskedPlaces.Named eduppus) {
      Ratio start = starts.places().get(0);
      Ratio eduppu = eduppus.places().get(0);
      otherEduppu(problem, start, eduppu, true)
          .ifPresent(a -> advice.add(new FitAdvice(Change.EARLIER_EDUPPU, a)));
      otherEduppu(problem, start, eduppu, false)
          .ifPresent(a -> advice.add(new FitAdvice(Change.LATER_EDUPPU, a)));
      first(problem.withPlaces(AskedPlaces.at(eduppu), AskedPlaces.at(eduppu)))
          .ifPresent(a -> advice.add(new FitAdvice(Change.EDUPPU_TO_EDUPPU, a)));
      otherStart(problem, start, eduppu)
          .ifPresent(a -> advice.add(new FitAdvice(Change.OTHER_START, a)));
    }
    RoundPlan plan = problem.plans().get(0);
    if (!plan.hasOpenWait() && plan.rounds().size() > 1) {
      WholeRange waits = new WholeRange(1, problem.avartana().beats() * Composition.HIGHEST_NADAI);
      shortestWait(problem.withPlans(List.of(plan.withWaitBeforeLast()), waits))
          .ifPresent(a -> advice.add(new FitAdvice(Change.WAIT, a)));
    }
    List<RoundPlan> others =
        RoundPlanReader.OPEN_NADAIS.stream()
            .map(nadai -> plan.endingIn(new RoundPlan.Part.Round(nadai, 1)))
            .filter(other -> !problem.plans().contains(other))
            .toList();
    if (!others.isEmpty()) {
      first(problem.withPlans(others, problem.waits()))
          .ifPresent(a -> advice.add(new FitAdvice(Change.LAST_NADAI, a)));
    }
    return List.copyOf(advice);
  }

  /** The nearest length outside the range, a few lengths at a time. */
  private static Optional<FitAnswer> otherLength(FitProblem problem, boolean shorter) {
    int from = shorter ? problem.matras().low() - 1 : problem.matras().high() + 1;
    int last = shorter ? 1 : Math.min(WholeRange.HIGHEST, problem.matras().high() + LONGEST);
    Comparator<FitAnswer> nearest =
        Comparator.comparing(FitAnswer::isHardlyPlayable)
            .thenComparingInt(answer -> Math.abs(answer.matras() - from))
            .thenComparingInt(FitAnswer::grade);
    Optional<FitAnswer> best = Optional.empty();
    int step = shorter ? -AT_A_TIME : AT_A_TIME;
    for (int at = from; shorter ? at >= last : at <= last; at += step) {
      int end = at + step - Integer.signum(step);
      int to = shorter ? Math.max(last, end) : Math.min(last, end);
      WholeRange range = new WholeRange(Math.min(at, to), Math.max(at, to));
      best = Stream.concat(best.stream(), answers(problem.withMatras(range), MOST)).min(nearest);
      if (best.isPresent() && !best.get().isHardlyPlayable()) {
        return best;
      }
    }
    return best;
  }

  /** The nearest place before or after the eduppu on which something lands that can be played. */
  private static Optional<FitAnswer> otherEduppu(
      FitProblem problem, Ratio start, Ratio eduppu, boolean before) {
    return answers(problem.withPlaces(AskedPlaces.at(start), new AskedPlaces.AnyLanding()), MOST)
        .filter(answer -> !answer.isHardlyPlayable())
        .filter(answer -> isBefore(problem, answer.eduppu(), eduppu) == before)
        .min(
            Comparator.comparing((FitAnswer answer) -> distance(problem, answer.eduppu(), eduppu))
                .thenComparingInt(FitAnswer::grade)
                .thenComparingInt(FitAnswer::matras));
  }

  /** The start that a performer would choose; among equals the one nearest to what was asked. */
  private static Optional<FitAnswer> otherStart(FitProblem problem, Ratio start, Ratio eduppu) {
    return answers(problem.withPlaces(new AskedPlaces.AnyStart(), AskedPlaces.at(eduppu)), MOST)
        .filter(answer -> !answer.start().equals(problem.avartana().placeOf(eduppu)))
        .min(
            Comparator.comparingInt(FitAnswer::grade)
                .thenComparing(answer -> distance(problem, answer.start(), start))
                .thenComparingInt(FitAnswer::matras));
  }

  private static Stream<FitAnswer> answers(FitProblem problem, int most) {
    return FitSearch.search(problem, most).answers().stream();
  }

  private static Optional<FitAnswer> first(FitProblem problem) {
    return answers(problem, 1).findFirst();
  }

  private static Optional<FitAnswer> shortestWait(FitProblem problem) {
    return answers(problem, MOST)
        .min(
            Comparator.comparing(FitAnswer::isHardlyPlayable)
                .thenComparingInt(FitAnswer::waitMatras)
                .thenComparingInt(FitAnswer::grade)
                .thenComparingInt(FitAnswer::matras));
  }

  private static Ratio distance(FitProblem problem, Ratio a, Ratio b) {
    Ratio cycle = Ratio.of(problem.avartana().beats());
    Ratio after = a.minus(b).modulo(cycle);
    return after.min(cycle.minus(after));
  }

  private static boolean isBefore(FitProblem problem, Ratio a, Ratio b) {
    Ratio cycle = Ratio.of(problem.avartana().beats());
    return a.minus(b).modulo(cycle).times(2).compareTo(cycle) > 0;
  }
}
