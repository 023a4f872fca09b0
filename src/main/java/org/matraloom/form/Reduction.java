package org.matraloom.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One phrase said several times, each sollu held shorter from line to line, or longer.
 *
 * @param sollus how many sollus the phrase has, at least 1
 * @param holds how many matras each sollu lasts, line by line
 */
public record Reduction(int sollus, List<Integer> holds) {

  /** The longest hold that is tried, in matras. */
  public static final int LONGEST_HOLD = 12;

  /** Copies the list. */
  public Reduction {
    holds = List.copyOf(holds);
  }

  /**
   * Every reduction that begins with one hold and ends with another, lines left out or not.
   *
   * @param sollus how many sollus the phrase has, at least 1
   * @param longest the hold of the first line, in matras, at most {@value #LONGEST_HOLD}
   * @param shortest the hold of the last line, in matras, at least 1 and less than the longest
   * @return reductions of at least two lines, those with most lines first
   * @throws IllegalArgumentException if a number is out of range
   */
  public static List<Reduction> all(int sollus, int longest, int shortest) {
    if (sollus < 1 || shortest < 1 || longest <= shortest || longest > LONGEST_HOLD) {
      throw new IllegalArgumentException(
          "a reduction goes from a hold of at most "
              + LONGEST_HOLD
              + " down to one of at least 1, given "
              + longest
              + " to "
              + shortest);
    }
    int between = longest - shortest - 1;
    List<Reduction> reductions = new ArrayList<>();
    for (int kept = 0; kept < 1 << between; kept++) {
      List<Integer> holds = new ArrayList<>(List.of(longest));
      for (int i = 0; i < between; i++) {
        if ((kept >> i & 1) == 1) {
          holds.add(longest - 1 - i);
        }
      }
      holds.add(shortest);
      reductions.add(new Reduction(sollus, holds));
    }
    reductions.sort((a, b) -> Integer.compare(b.holds.size(), a.holds.size()));
    return List.copyOf(reductions);
  }

  /**
   * What is left of a phrase line by line when sollus are dropped from one end.
   *
   * @param phrase the sollus or words of the phrase
   * @param step how many are dropped each time, at least 1
   * @param fromFront whether the beginning is dropped, or the end
   * @param <T> what the phrase is made of
   * @return the lines, the whole phrase first, as long as something is left
   */
  public static <T> List<List<T>> dropping(List<T> phrase, int step, boolean fromFront) {
    List<List<T>> lines = new ArrayList<>();
    for (int dropped = 0; dropped < phrase.size(); dropped += step) {
      lines.add(
          List.copyOf(
              fromFront
                  ? phrase.subList(dropped, phrase.size())
                  : phrase.subList(0, phrase.size() - dropped)));
    }
    return List.copyOf(lines);
  }

  /**
   * The same lines from the last to the first: an expansion.
   *
   * @return the lines turned round
   */
  public Reduction reversed() {
    List<Integer> turned = new ArrayList<>(holds);
    Collections.reverse(turned);
    return new Reduction(sollus, turned);
  }

  /**
   * The lengths of the lines.
   *
   * @return matras
   */
  public List<Integer> lines() {
    return holds.stream().map(hold -> hold * sollus).toList();
  }

  /**
   * The length of all lines.
   *
   * @return matras
   */
  public int matras() {
    return lines().stream().mapToInt(Integer::intValue).sum();
  }

  /**
   * Writes the lines as drummers do.
   *
   * @return for example "5*6 5*4 5*2"
   */
  public String written() {
    return holds.stream().map(hold -> sollus + "*" + hold).collect(Collectors.joining(" "));
  }
}
