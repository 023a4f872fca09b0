package org.matraloom.verdict;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.matraloom.measure.TakeFindings;
import org.matraloom.score.Performance;

/**
 * Which of two takes of a score is cleaner, and in what.
 *
 * <p>The order of {@link FaultKind} decides: the take whose worst fault comes later in it is
 * cleaner, of two with the same worst fault, or none, the one with fewer kinds of fault. After that
 * the one whose sollus lie nearer to its pulse, if the difference is at least 2 ms and a fifth.
 * Order and limits are our choice.
 */
public final class CleanerTake {

  private static final double LEAST_SHARE = 0.2;
  private static final double LEAST_SECONDS = 0.002;
  private static final int MS_PER_SECOND = 1_000;

  private final TakeFindings first;
  private final TakeFindings second;
  private final Performance performance;

  /**
   * Sets two takes against one another.
   *
   * @param first one take
   * @param second another of the same score
   * @param performance what was to be said
   */
  public CleanerTake(TakeFindings first, TakeFindings second, Performance performance) {
    this.first = first;
    this.second = second;
    this.performance = performance;
  }

  /**
   * Tells which is cleaner.
   *
   * @return one sentence
   */
  public String verdict() {
    if (!isJudged(first) || !isJudged(second)) {
      String which = isJudged(first) ? "the second" : isJudged(second) ? "the first" : "neither";
      return "Which take is cleaner cannot be told: "
          + which
          + (which.equals("neither") ? " can be judged." : " cannot be judged.");
    }
    List<FaultKind> one = Faults.kinds(first, performance);
    List<FaultKind> two = Faults.kinds(second, performance);
    int order = cleanestFirst().compare(one, two);
    if (order == 0) {
      return bySpread() + also("; both have ", one.stream().filter(two::contains)) + ".";
    }
    List<FaultKind> cleaner = order < 0 ? one : two;
    List<FaultKind> other = order < 0 ? two : one;
    return (order < 0 ? "The first" : "The second")
        + " take is cleaner: it is free of "
        + joined(other.stream().filter(Predicate.not(cleaner::contains)))
        + also("; new in it: ", cleaner.stream().filter(Predicate.not(other::contains)))
        + also("; both have ", cleaner.stream().filter(other::contains))
        + ".";
  }

  private static boolean isJudged(TakeFindings take) {
    return take.doubt().isEmpty() && take.pulse().isPresent();
  }

  private static Comparator<List<FaultKind>> cleanestFirst() {
    Comparator<List<FaultKind>> byWorst =
        Comparator.comparing(
            kinds -> kinds.isEmpty() ? Integer.MAX_VALUE : kinds.get(0).ordinal(),
            Comparator.reverseOrder());
    return byWorst.thenComparingInt(List::size);
  }

  private String bySpread() {
    double one = first.pulse().orElseThrow().spreadSeconds();
    double two = second.pulse().orElseThrow().spreadSeconds();
    double apart = Math.abs(one - two);
    if (apart < LEAST_SECONDS || apart < LEAST_SHARE * Math.max(one, two)) {
      return "Neither take is cleaner than the other";
    }
    return (one < two ? "The first" : "The second")
        + " take is cleaner: its sollus lie "
        + Math.round(MS_PER_SECOND * Math.min(one, two))
        + " ms from their pulse, those of the other "
        + Math.round(MS_PER_SECOND * Math.max(one, two))
        + " ms";
  }

  private static String also(String lead, Stream<FaultKind> kinds) {
    String words = joined(kinds);
    return words.isEmpty() ? "" : lead + words;
  }

  private static String joined(Stream<FaultKind> kinds) {
    List<String> words = kinds.map(FaultKind::words).toList();
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }
}
