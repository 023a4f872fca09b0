package org.matraloom.breath;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Costs as a few longs each, so that they are added and compared quickly.
 *
 * <p>Counts of up to two million stand three to a long, the heavier term in the higher bits; adding
 * the longs adds the counts, and comparing them in order compares the terms in order. The first
 * term is left out, for it is the same in all plans that are compared; the last has a long of its
 * own.
 */
final class PackedCost {

  /** How many longs make a cost. */
  static final int WIDTH;

  private static final int BITS = 21;
  private static final int PER_LONG = 3;
  private static final int FIRST = PlanTerm.OVER.ordinal() + 1;

  static {
    WIDTH = (PlanTerm.UNEVEN.ordinal() - FIRST + PER_LONG - 1) / PER_LONG + 1;
  }

  private PackedCost() {}

  /** Adds to one count of a cost that begins at an index. */
  static void add(long[] costs, int at, PlanTerm term, long count) {
    if (term == PlanTerm.UNEVEN) {
      costs[at + WIDTH - 1] += count;
      return;
    }
    int place = term.ordinal() - FIRST;
    costs[at + place / PER_LONG] += count << BITS * (PER_LONG - 1 - place % PER_LONG);
  }

  /** Compares two costs that begin at indices. */
  static int compare(long[] costs, int at, long[] others, int other) {
    for (int part = 0; part < WIDTH; part++) {
      int order = Long.compare(costs[at + part], others[other + part]);
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  /** The cost that begins at an index, with the amount that was left out. */
  static PlanCost unpacked(long[] costs, int at, long over) {
    Map<PlanTerm, Long> amounts = new EnumMap<>(PlanTerm.class);
    for (PlanTerm term : PlanTerm.values()) {
      int place = term.ordinal() - FIRST;
      if (term == PlanTerm.OVER) {
        amounts.put(term, over);
      } else if (term == PlanTerm.UNEVEN) {
        amounts.put(term, costs[at + WIDTH - 1]);
      } else {
        long packed = costs[at + place / PER_LONG];
        int shift = BITS * (PER_LONG - 1 - place % PER_LONG);
        amounts.put(term, packed >> shift & (1L << BITS) - 1);
      }
    }
    List<Long> inOrder = new ArrayList<>(amounts.values());
    return new PlanCost(inOrder);
  }
}
