package org.matraloom.fit;

import java.util.List;

/**
 * What a search found.
 *
 * @param answers the smallest answers first, each tried out
 * @param count how many answers there are in all, those not listed included
 */
public record FitResult(List<FitAnswer> answers, long count) {

  /** Copies the list. */
  public FitResult {
    answers = List.copyOf(answers);
  }

  /**
   * How many answers are not listed.
   *
   * @return 0 or more
   */
  public long more() {
    return count - answers.size();
  }
}
