package org.matraloom.breath;

import java.util.List;

/**
 * What a plan costs: an amount for every term, compared in the order of the terms.
 *
 * @param amounts one for each {@link PlanTerm}, in its order, none negative
 */
public record PlanCost(List<Long> amounts) implements Comparable<PlanCost> {

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if there is not one amount for each term
   */
  public PlanCost {
    amounts = List.copyOf(amounts);
    if (amounts.size() != PlanTerm.values().length) {
      throw new IllegalArgumentException("a cost has an amount for every term");
    }
  }

  /**
   * The amount of a term.
   *
   * @param term the term
   * @return how many there are of what it counts
   */
  public long of(PlanTerm term) {
    return amounts.get(term.ordinal());
  }

  @Override
  public int compareTo(PlanCost other) {
    for (int term = 0; term < amounts.size(); term++) {
      int order = Long.compare(amounts.get(term), other.amounts.get(term));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }
}
