package org.matraloom.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Lines of whole matras that grow or shrink by any steps, once or with one turn, and come to a
 * total.
 *
 * <p>The first line follows from the steps and the total; so steps are tried, those that differ
 * least from one another first.
 */
final class UnequalSteps {

  private final int total;
  private final int lines;
  private final int turn;
  private final int direction;
  private final int smallest;
  private final int largest;
  private final int most;
  private final Set<List<Integer>> found;
  private final int[] offsets;

  private UnequalSteps(
      int total,
      int lines,
      int turn,
      int direction,
      int smallest,
      int largest,
      int most,
      Set<List<Integer>> found) {
    this.total = total;
    this.lines = lines;
    this.turn = turn;
    this.direction = direction;
    this.smallest = smallest;
    this.largest = largest;
    this.most = most;
    this.found = found;
    this.offsets = new int[lines];
  }

  /** Adds lines until there are so many or no more; none for a shape that is not made of steps. */
  static void add(Yati shape, int total, int lines, int most, Set<List<Integer>> found) {
    int direction =
        switch (shape) {
          case SROTOVAHA, MRIDANGA -> 1;
          case GOPUCCHA, DAMARU -> -1;
          default -> 0;
        };
    if (direction == 0) {
      return;
    }
    for (int spread = 0; spread < total && found.size() < most; spread++) {
      for (int smallest = 1; smallest + spread < total && found.size() < most; smallest++) {
        for (int turn : turns(shape, lines)) {
          new UnequalSteps(total, lines, turn, direction, smallest, smallest + spread, most, found)
              .step(1, 0, 0);
        }
      }
    }
  }

  /** After how many steps the lines turn, the middle first; those of one direction never do. */
  private static List<Integer> turns(Yati shape, int lines) {
    if (shape == Yati.SROTOVAHA || shape == Yati.GOPUCCHA) {
      return List.of(lines);
    }
    return IntStream.range(1, lines - 1)
        .boxed()
        .sorted(Comparator.comparingInt(turn -> Math.abs(2 * turn - (lines - 1))))
        .toList();
  }

  /** Sets one line after another, as far as the total is not passed. */
  private void step(int line, int sum, int lowest) {
    if (found.size() >= most || sum - line * lowest + lines > total) {
      return;
    }
    if (line == lines) {
      addIfWhole(sum, lowest);
      return;
    }
    int way = line <= turn ? direction : -direction;
    for (int size = smallest; size <= largest; size++) {
      offsets[line] = offsets[line - 1] + way * size;
      step(line + 1, sum + offsets[line], Math.min(lowest, offsets[line]));
    }
  }

  private void addIfWhole(int sum, int lowest) {
    if ((total - sum) % lines != 0 || (total - sum) / lines + lowest < 1) {
      return;
    }
    int first = (total - sum) / lines;
    List<Integer> lengths = new ArrayList<>();
    for (int offset : offsets) {
      lengths.add(first + offset);
    }
    found.add(Collections.unmodifiableList(lengths));
  }
}
