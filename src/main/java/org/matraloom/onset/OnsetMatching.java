package org.matraloom.onset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Pairs found onsets with true ones, each used once at most.
 *
 * <p>As many pairs as possible are formed within the window; among all ways of forming that many,
 * the one with the least total distance is taken. The count of pairs is that of mir_eval (Raffel et
 * al., "mir_eval: a transparent implementation of common MIR metrics", ISMIR 2014).
 *
 * @param pairs matched places, in order of time
 * @param referenceCount how many true onsets there were
 * @param foundCount how many onsets had been found
 */
public record OnsetMatching(List<Pair> pairs, int referenceCount, int foundCount) {

  /**
   * One true onset and the one found for it.
   *
   * @param reference its place in the list of true onsets, from 0
   * @param found its place in the list of found onsets, from 0
   * @param errorSeconds found minus true, in seconds; positive is late
   */
  public record Pair(int reference, int found, double errorSeconds) {}

  /** Keeps the pairs as given. */
  public OnsetMatching {
    pairs = List.copyOf(pairs);
  }

  /**
   * Matches two lists of times.
   *
   * @param reference true onsets in seconds, ascending
   * @param found onsets found, in seconds, ascending
   * @param windowSeconds how far apart a pair may be, in seconds, inclusive; at least 0
   * @return the matching
   * @throws IllegalArgumentException if a list does not ascend or the window is negative
   */
  public static OnsetMatching within(double[] reference, double[] found, double windowSeconds) {
    requireAscending("true", reference);
    requireAscending("found", found);
    if (!(windowSeconds >= 0)) {
      throw new IllegalArgumentException(
          "the matching window is " + windowSeconds + " s; it must be 0 or more");
    }
    List<Pair> pairs = new ArrayList<>();
    int ref = 0;
    int est = 0;
    while (ref < reference.length && est < found.length) {
      int refEnd = ref;
      int estEnd = est;
      double last = Math.min(reference[ref], found[est]);
      while (true) {
        if (refEnd < reference.length && reference[refEnd] - last <= windowSeconds) {
          last = Math.max(last, reference[refEnd++]);
        } else if (estEnd < found.length && found[estEnd] - last <= windowSeconds) {
          last = Math.max(last, found[estEnd++]);
        } else {
          break;
        }
      }
      new Cluster(reference, ref, refEnd, found, est, estEnd, windowSeconds).addTo(pairs);
      ref = refEnd;
      est = estEnd;
    }
    return new OnsetMatching(pairs, reference.length, found.length);
  }

  /**
   * The counts, for precision, recall and F-measure.
   *
   * @return the score
   */
  public OnsetScore score() {
    return new OnsetScore(pairs.size(), foundCount - pairs.size(), referenceCount - pairs.size());
  }

  /**
   * The median of the absolute errors of the pairs.
   *
   * @return seconds; not a number if nothing was matched
   */
  public double medianAbsoluteErrorSeconds() {
    return median(pairs.stream().mapToDouble(pair -> Math.abs(pair.errorSeconds())).toArray());
  }

  /**
   * The median of the signed errors of the pairs: the bias.
   *
   * @return seconds, positive is late; not a number if nothing was matched
   */
  public double medianErrorSeconds() {
    return median(pairs.stream().mapToDouble(Pair::errorSeconds).toArray());
  }

  private static double median(double[] values) {
    if (values.length == 0) {
      return Double.NaN;
    }
    Arrays.sort(values);
    int middle = values.length / 2;
    return values.length % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
  }

  private static void requireAscending(String name, double[] times) {
    for (int i = 0; i < times.length; i++) {
      if (!Double.isFinite(times[i]) || (i > 0 && times[i] < times[i - 1])) {
        throw new IllegalArgumentException(
            "the "
                + name
                + " onsets must be finite and ascend; number "
                + (i + 1)
                + " is "
                + times[i]
                + " s");
      }
    }
  }

  /** A stretch of both lists that no pair can leave: neighbours lie within the window. */
  private record Cluster(
      double[] reference,
      int refFrom,
      int refTo,
      double[] found,
      int estFrom,
      int estTo,
      double windowSeconds) {

    /** Best pairs by dynamic programming: pairs of ascending lists need never cross. */
    void addTo(List<Pair> pairs) {
      int rows = refTo - refFrom;
      int columns = estTo - estFrom;
      int[][] count = new int[rows + 1][columns + 1];
      double[][] cost = new double[rows + 1][columns + 1];
      for (int r = rows - 1; r >= 0; r--) {
        for (int c = columns - 1; c >= 0; c--) {
          boolean skipRow =
              better(count[r + 1][c], cost[r + 1][c], count[r][c + 1], cost[r][c + 1]);
          count[r][c] = skipRow ? count[r + 1][c] : count[r][c + 1];
          cost[r][c] = skipRow ? cost[r + 1][c] : cost[r][c + 1];
          double distance = distance(r, c);
          if (distance <= windowSeconds
              && better(
                  count[r + 1][c + 1] + 1,
                  cost[r + 1][c + 1] + distance,
                  count[r][c],
                  cost[r][c])) {
            count[r][c] = count[r + 1][c + 1] + 1;
            cost[r][c] = cost[r + 1][c + 1] + distance;
          }
        }
      }
      int r = 0;
      int c = 0;
      while (r < rows && c < columns) {
        if (count[r][c] == count[r + 1][c] && cost[r][c] == cost[r + 1][c]) {
          r++;
        } else if (count[r][c] == count[r][c + 1] && cost[r][c] == cost[r][c + 1]) {
          c++;
        } else {
          int ref = refFrom + r++;
          int est = estFrom + c++;
          pairs.add(new Pair(ref, est, found[est] - reference[ref]));
        }
      }
    }

    private double distance(int row, int column) {
      return Math.abs(found[estFrom + column] - reference[refFrom + row]);
    }

    private static boolean better(int count, double cost, int otherCount, double otherCost) {
      return count > otherCount || (count == otherCount && cost < otherCost);
    }
  }
}
