package org.matraloom.form;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A purvanga that is there already and the length the whole must come to.
 *
 * @param matras the length of the whole
 * @param lines the lengths that come before the ending, in matras
 */
public record GivenPurvanga(int matras, List<Integer> lines) {

  /** Copies the list. */
  public GivenPurvanga {
    lines = List.copyOf(lines);
  }

  /**
   * What is left for the ending.
   *
   * @return matras, negative if the lines are too long
   */
  public int left() {
    return matras - lines.stream().mapToInt(Integer::intValue).sum();
  }

  /**
   * The sum with an ending put in; a borrowed matra is taken from the last line.
   *
   * @param ending an ending that fills what is left
   * @return for example "24 + 74 + 30 = 128"
   * @throws IllegalArgumentException if the sum does not come out
   */
  public String sum(Ending ending) {
    List<Integer> terms = new ArrayList<>(lines);
    if (!terms.isEmpty()) {
      terms.set(terms.size() - 1, terms.get(terms.size() - 1) - ending.borrowed());
    }
    terms.add(ending.matras());
    int total = terms.stream().mapToInt(Integer::intValue).sum();
    if (total != matras) {
      throw new IllegalArgumentException(ending.written() + " does not fill " + left() + " matras");
    }
    return terms.stream().map(String::valueOf).collect(Collectors.joining(" + ")) + " = " + total;
  }
}
