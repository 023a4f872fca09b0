package org.matraloom.mouth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;

/**
 * Which of the sounds of a recording are the sollus of a cue sheet: the cheapest way through both
 * in order (dynamic programming).
 *
 * <p>A sound that is passed over costs by how sure it is, a sollu that is passed over costs more
 * than that, and inside a word the sounds are to follow in even steps; what is much softer than the
 * rest is a breath or a murmur rather than a sollu.
 */
final class CueMatching {

  private static final double MISSING = 4;
  private static final double PASSED = 3;
  private static final double UNSURE = 1.5;
  private static final double SOFT = 0.2;
  private static final double SOFT_DB = 8;
  private static final double UNEVEN = 1.2;
  private static final double NO_PAUSE = 3;

  /** Rows are read with half a second between them; less from beginning to beginning is no row. */
  private static final double ROW_SECONDS = 0.5;

  private static final double OFF_TIME = 6;
  private static final double TIME_REACH_SECONDS = 0.08;
  private static final int MOST_MISSING = 4;
  private static final int MOST_PASSED = 12;
  private static final double LONGEST_STEP_SECONDS = 0.9;

  private final List<CalledSollu> called;
  private final List<Onset> onsets;
  private final double[] levelsDb;
  private final double usualDb;
  private final double stepSeconds;
  private final double[] passedBefore;

  private CueMatching(List<CalledSollu> called, List<Onset> onsets, double[] levelsDb) {
    this.called = called;
    this.levelsDb = levelsDb;
    this.usualDb = usual(levelsDb);
    this.onsets = onsets;
    this.stepSeconds = step();
    this.passedBefore = new double[onsets.size() + 1];
    for (int j = 0; j < onsets.size(); j++) {
      passedBefore[j + 1] = passedBefore[j] + PASSED * Math.min(1, onsets.get(j).confidence());
    }
  }

  /**
   * Sounds with those put in that only the sheet knows of: where it gives a time and nothing is
   * heard. Where it gives the time of every sollu, sounds that lie elsewhere are none of them.
   */
  static List<Onset> withTold(List<CalledSollu> called, List<Onset> heard) {
    List<Onset> all = new ArrayList<>(heard);
    if (knowsAll(called)) {
      all.removeIf(sound -> called.stream().noneMatch(each -> isNear(sound, each)));
    }
    for (CalledSollu each : called) {
      if (each.seconds().isPresent()) {
        double at = each.seconds().getAsDouble();
        if (heard.stream().noneMatch(o -> Math.abs(o.seconds() - at) <= TIME_REACH_SECONDS)) {
          all.add(new Onset(at, 0));
        }
      }
    }
    all.sort(Comparator.comparingDouble(Onset::seconds));
    return all;
  }

  private static boolean knowsAll(List<CalledSollu> called) {
    return called.stream().allMatch(each -> each.seconds().isPresent());
  }

  private static boolean isNear(Onset sound, CalledSollu called) {
    return Math.abs(sound.seconds() - called.seconds().getAsDouble()) <= TIME_REACH_SECONDS;
  }

  /**
   * Finds the sounds.
   *
   * @param called what was spoken
   * @param onsets what was heard
   * @param levelsDb how loud it is after each of them
   * @return for each sollu the index of its sound; empty where it was not found
   */
  static List<OptionalInt> of(List<CalledSollu> called, List<Onset> onsets, double[] levelsDb) {
    return knowsAll(called)
        ? nearest(called, onsets)
        : new CueMatching(called, onsets, levelsDb).match();
  }

  /** The sounds nearest to the told times, each after the one before. */
  private static List<OptionalInt> nearest(List<CalledSollu> called, List<Onset> onsets) {
    List<OptionalInt> matched = new ArrayList<>();
    int from = 0;
    for (CalledSollu each : called) {
      double at = each.seconds().getAsDouble();
      OptionalInt best =
          IntStream.range(from, onsets.size())
              .boxed()
              .min(Comparator.comparingDouble(j -> Math.abs(onsets.get(j).seconds() - at)))
              .filter(j -> isNear(onsets.get(j), each))
              .map(OptionalInt::of)
              .orElse(OptionalInt.empty());
      matched.add(best);
      from = best.isPresent() ? best.getAsInt() + 1 : from;
    }
    return matched;
  }

  private static double usual(double[] levelsDb) {
    double[] sorted = levelsDb.clone();
    Arrays.sort(sorted);
    return sorted.length == 0 ? 0 : sorted[sorted.length * 2 / 3];
  }

  private double step() {
    double[] gaps = new double[Math.max(0, onsets.size() - 1)];
    Arrays.setAll(gaps, j -> onsets.get(j + 1).seconds() - onsets.get(j).seconds());
    double[] close =
        Arrays.stream(gaps).filter(gap -> gap < LONGEST_STEP_SECONDS).sorted().toArray();
    return close.length == 0 ? LONGEST_STEP_SECONDS : close[close.length / 2];
  }

  private List<OptionalInt> match() {
    int sollus = called.size();
    int sounds = onsets.size();
    double[][] cost = new double[sollus][sounds];
    int[][] from = new int[sollus][sounds];
    double best = MISSING * sollus;
    int bestEnd = -1;
    for (int i = 0; i < sollus; i++) {
      for (int j = 0; j < sounds; j++) {
        cost[i][j] = i * MISSING + passedBefore[j];
        from[i][j] = -1;
        for (int a = Math.max(0, i - 1 - MOST_MISSING); a < i; a++) {
          for (int b = Math.max(0, j - 1 - MOST_PASSED); b < j; b++) {
            double way = cost[a][b] + between(a, b, i, j);
            if (way < cost[i][j]) {
              cost[i][j] = way;
              from[i][j] = a * sounds + b;
            }
          }
        }
        cost[i][j] += own(i, j);
        double whole =
            cost[i][j] + (sollus - 1 - i) * MISSING + passedBefore[sounds] - passedBefore[j + 1];
        if (whole < best || bestEnd < 0) {
          best = whole;
          bestEnd = i * sounds + j;
        }
      }
    }
    return traced(from, bestEnd, sollus, sounds);
  }

  private static List<OptionalInt> traced(int[][] from, int end, int sollus, int sounds) {
    List<OptionalInt> matched = new ArrayList<>();
    for (int i = 0; i < sollus; i++) {
      matched.add(OptionalInt.empty());
    }
    for (int at = end; at >= 0; at = from[at / sounds][at % sounds]) {
      matched.set(at / sounds, OptionalInt.of(at % sounds));
    }
    return matched;
  }

  private double own(int i, int j) {
    double soft = Math.max(0, usualDb - levelsDb[j] - SOFT_DB);
    double unsure =
        UNSURE * (1 - Math.min(1, onsets.get(j).confidence())) + Math.min(MISSING, SOFT * soft);
    if (called.get(i).seconds().isEmpty()) {
      return unsure;
    }
    double off = Math.abs(called.get(i).seconds().getAsDouble() - onsets.get(j).seconds());
    return unsure + OFF_TIME * Math.min(4, off / TIME_REACH_SECONDS);
  }

  private double between(int a, int b, int i, int j) {
    double seconds = onsets.get(j).seconds() - onsets.get(b).seconds();
    double usual = (i - a) * stepSeconds;
    boolean sameWord = true;
    boolean sameRow = true;
    for (int k = a + 1; k <= i; k++) {
      sameWord &= !called.get(k).opensWord();
      sameRow &= !called.get(k).opensRow();
    }
    double timing;
    if (sameWord) {
      timing = UNEVEN * Math.abs(Math.log(seconds / usual));
    } else if (sameRow) {
      timing = UNEVEN * Math.max(0, Math.log(0.8 * usual / seconds));
    } else {
      double least = Math.max(1.3 * stepSeconds, ROW_SECONDS) + (i - a - 1) * stepSeconds;
      timing = NO_PAUSE * Math.max(0, Math.log(least / seconds));
    }
    return timing + (i - a - 1) * MISSING + passedBefore[j] - passedBefore[b + 1];
  }
}
