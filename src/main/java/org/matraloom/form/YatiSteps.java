package org.matraloom.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.time.Ratio;

/**
 * By how much each line differs from the one before. A line repeated at once counts as one line, as
 * it does for the shape.
 *
 * @param steps at least one fewer than there are lines, none of them nought; positive where the
 *     lines grow
 */
public record YatiSteps(List<Ratio> steps) {

  /** Copies the list. */
  public YatiSteps {
    steps = List.copyOf(steps);
  }

  /**
   * The steps between lines.
   *
   * @param lines the lengths in order
   * @return the steps
   */
  public static YatiSteps of(List<Ratio> lines) {
    List<Ratio> steps = new ArrayList<>();
    for (int i = 1; i < lines.size(); i++) {
      Ratio step = lines.get(i).minus(lines.get(i - 1));
      if (step.signum() != 0) {
        steps.add(step);
      }
    }
    return new YatiSteps(steps);
  }

  /**
   * Whether every step is as large as every other, growing or shrinking.
   *
   * @return true if so, and for fewer than two lines
   */
  public boolean areEqual() {
    return new HashSet<>(sizes()).size() <= 1;
  }

  /**
   * The steps in words.
   *
   * @return "no step", "equal steps of 7", or "steps +2, +3, -1"
   */
  public String inWords() {
    if (steps.isEmpty()) {
      return "no step";
    }
    if (areEqual()) {
      return "equal steps of " + sizes().get(0).toMixed();
    }
    return steps.stream()
        .map(step -> (step.signum() > 0 ? "+" : "") + step.toMixed())
        .collect(Collectors.joining(", ", "steps ", ""));
  }

  private List<Ratio> sizes() {
    return steps.stream().map(step -> step.signum() < 0 ? step.negate() : step).toList();
  }
}
