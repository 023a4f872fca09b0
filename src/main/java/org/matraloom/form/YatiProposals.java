package org.matraloom.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Proposes lines of a wished shape that come to a wished total. */
public final class YatiProposals {

  /** The most lines that are proposed. */
  public static final int MOST_LINES = 12;

  /** The longest total that is filled, in matras. */
  public static final int LONGEST = 2_000;

  private YatiProposals() {}

  /**
   * Lines of a shape. First those that grow and shrink by equal steps, the smallest step first,
   * then those with unequal steps, the most even first: every list in which no two neighbours are
   * equal is among them. An irregular shape goes up and down, and its longest line takes what is
   * left over.
   *
   * @param shape the wished yati
   * @param total the matras of all lines together, at most {@value #LONGEST}
   * @param lines how many lines, 3 to {@value #MOST_LINES}
   * @param most how many proposals to make at most
   * @return proposals with whole matras; each has the shape and the total
   * @throws IllegalArgumentException if a number is out of range
   */
  public static List<List<Integer>> lines(Yati shape, int total, int lines, int most) {
    if (lines < Yati.FEWEST_LINES || lines > MOST_LINES || total < 1 || total > LONGEST) {
      throw new IllegalArgumentException(
          "a shape has 3 to "
              + MOST_LINES
              + " lines and 1 to "
              + LONGEST
              + " matras, given "
              + lines
              + " lines and "
              + total
              + " matras");
    }
    Set<List<Integer>> proposals = new LinkedHashSet<>(equalSteps(shape, total, lines));
    UnequalSteps.add(shape, total, lines, most, proposals);
    return proposals.stream().limit(most).toList();
  }

  private static List<List<Integer>> equalSteps(Yati shape, int total, int lines) {
    List<List<Integer>> proposals = new ArrayList<>();
    for (int step = 0; step < total; step++) {
      List<Integer> shifts = shifts(shape, lines, step);
      int sum = shifts.stream().mapToInt(Integer::intValue).sum();
      int left = total - sum;
      if (shifts.isEmpty() || left < lines) {
        break;
      }
      if (left % lines == 0 || shape == Yati.VISHAMA) {
        List<Integer> proposal = lengthened(shifts, left / lines, left % lines);
        if (Yati.ofMatras(proposal) == shape) {
          proposals.add(proposal);
        }
      }
    }
    return List.copyOf(proposals);
  }

  private static List<Integer> lengthened(List<Integer> shifts, int shortest, int rest) {
    List<Integer> lines = new ArrayList<>();
    shifts.forEach(shift -> lines.add(shift + shortest));
    int longest = lines.indexOf(Collections.max(lines));
    lines.set(longest, lines.get(longest) + rest);
    return List.copyOf(lines);
  }

  /** How much longer than the shortest each line is. */
  private static List<Integer> shifts(Yati shape, int lines, int step) {
    return switch (shape) {
      case SAMA -> step == 0 ? Collections.nCopies(lines, 0) : List.of();
      case SROTOVAHA -> IntStream.range(0, lines).map(i -> i * step).boxed().toList();
      case GOPUCCHA -> IntStream.range(0, lines).map(i -> (lines - 1 - i) * step).boxed().toList();
      case MRIDANGA ->
          IntStream.range(0, lines).map(i -> Math.min(i, lines - 1 - i) * step).boxed().toList();
      case DAMARU ->
          IntStream.range(0, lines)
              .map(i -> (Math.max(i, lines - 1 - i) - lines / 2) * step)
              .boxed()
              .toList();
      case VISHAMA ->
          IntStream.range(0, lines).map(i -> (i % 2 * 2 + i / 2) * step).boxed().toList();
      case NONE -> List.of();
    };
  }
}
