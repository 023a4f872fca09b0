package org.matraloom.notation;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.matraloom.score.Composition;

/**
 * What came of reading a score.
 *
 * @param composition the piece, present if no problem is an error
 * @param problems errors and warnings in the order of the text
 */
public record Reading(Optional<Composition> composition, List<Problem> problems) {

  /** Copies the list. */
  public Reading {
    problems = List.copyOf(problems);
  }

  /**
   * All problems for a terminal.
   *
   * @return the formatted problems, one after another, without a final line end; empty if there are
   *     none
   */
  public String format() {
    return problems.stream().map(Problem::format).collect(Collectors.joining("\n"));
  }
}
