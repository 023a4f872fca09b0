package org.matraloom.pulse;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * How a pulse wanders about its line: by how much each beat is later.
 *
 * <p>Deviations are smoothed by locally weighted straight lines that outliers do not bend (W. S.
 * Cleveland, J. Am. Stat. Assoc. 74 (1979) 829-836): tricube weights over {@value #REACH_BEATS}
 * beats to each side, and biweights of the residuals. The sum is taken for a pulse that wanders
 * only if it explains the deviations much better than the line alone, and if it never jumps by half
 * a matra: a jump is a matra too many or too few and not a matter of tempo.
 */
public final class PulseDeviation {

  /** The pulse keeps its line. */
  public static final PulseDeviation NONE = new PulseDeviation(List.of());

  static final double REACH_BEATS = 6;

  private static final int LEAST_SOLLUS = 16;

  /** A shorter run does not tell wandering from its end. */
  private static final double LEAST_BEATS = 16;

  private static final int PASSES = 3;
  private static final double BIWEIGHT = 6;
  private static final double LEAST_GAIN = 1.5;
  private static final double LEAST_SECONDS = 0.010;
  private static final int JUMP_SOLLUS = 4;
  private static final double JUMP_MATRAS = 0.5;

  /** For each run, how much later it is at certain beats. */
  private final List<TreeMap<Double, Double>> runs;

  private PulseDeviation(List<TreeMap<Double, Double>> runs) {
    this.runs = runs;
  }

  /**
   * The wandering of a take.
   *
   * @param beat where each sollu stands, in beats
   * @param late how much later than the line it was said, in seconds
   * @param run its run, from 1
   * @param matraSeconds the length of a matra
   * @return {@link #NONE} if the line will do
   */
  public static PulseDeviation of(double[] beat, double[] late, int[] run, double matraSeconds) {
    List<TreeMap<Double, Double>> runs = new ArrayList<>();
    double[] left = late.clone();
    int most = IntStream.of(run).max().orElse(0);
    for (int r = 1; r <= most; r++) {
      int number = r;
      int[] own = IntStream.range(0, beat.length).filter(i -> run[i] == number).toArray();
      if (jumps(late, own, matraSeconds)) {
        return NONE;
      }
      TreeMap<Double, Double> smooth = new TreeMap<>();
      if (own.length >= LEAST_SOLLUS && beat[own[own.length - 1]] - beat[own[0]] >= LEAST_BEATS) {
        smooth = smooth(beat, late, own);
      }
      runs.add(smooth);
      for (int i : own) {
        left[i] -= at(smooth, beat[i]);
      }
    }
    double before = RobustStatistics.spreadAroundZero(late);
    double after = RobustStatistics.spreadAroundZero(left);
    return before > LEAST_SECONDS && before > LEAST_GAIN * after ? new PulseDeviation(runs) : NONE;
  }

  /** How much later a beat of a run is than the line has it, in seconds. */
  double lateSeconds(double beat, int run) {
    return run > runs.size() ? 0 : at(runs.get(run - 1), beat);
  }

  private static double at(TreeMap<Double, Double> smooth, double beat) {
    var before = smooth.floorEntry(beat);
    var after = smooth.ceilingEntry(beat);
    if (before == null || after == null) {
      return smooth.isEmpty() ? 0 : (before == null ? after : before).getValue();
    }
    double apart = after.getKey() - before.getKey();
    double part = apart == 0 ? 0 : (beat - before.getKey()) / apart;
    return before.getValue() + part * (after.getValue() - before.getValue());
  }

  private static boolean jumps(double[] late, int[] own, double matraSeconds) {
    for (int i = JUMP_SOLLUS; i + JUMP_SOLLUS <= own.length; i++) {
      double before = median(late, own, i - JUMP_SOLLUS, i);
      double after = median(late, own, i, i + JUMP_SOLLUS);
      if (Math.abs(after - before) > JUMP_MATRAS * matraSeconds) {
        return true;
      }
    }
    return false;
  }

  private static double median(double[] late, int[] own, int from, int to) {
    return RobustStatistics.median(
        IntStream.range(from, to).mapToDouble(i -> late[own[i]]).toArray());
  }

  private static TreeMap<Double, Double> smooth(double[] beat, double[] late, int[] own) {
    double[] trust = new double[own.length];
    java.util.Arrays.fill(trust, 1);
    TreeMap<Double, Double> smooth = new TreeMap<>();
    for (int pass = 0; pass < PASSES; pass++) {
      smooth = new TreeMap<>();
      int from = 0;
      double end = beat[own[own.length - 1]];
      for (double at = beat[own[0]]; at < end + 1; at++) {
        double knot = Math.min(at, end);
        while (beat[own[from]] < knot - REACH_BEATS) {
          from++;
        }
        smooth.put(knot, local(beat, late, own, trust, from, knot));
      }
      double[] off = new double[own.length];
      for (int i = 0; i < own.length; i++) {
        off[i] = late[own[i]] - at(smooth, beat[own[i]]);
      }
      double scale = BIWEIGHT * Math.max(1e-4, RobustStatistics.spreadAroundZero(off));
      for (int i = 0; i < own.length; i++) {
        double u = Math.min(1, Math.abs(off[i]) / scale);
        trust[i] = (1 - u * u) * (1 - u * u);
      }
    }
    return smooth;
  }

  /** The value at a knot of the straight line through what is near it. */
  private static double local(
      double[] beat, double[] late, int[] own, double[] trust, int from, double knot) {
    double w = 1e-12;
    double wx = 0;
    double wxx = 0;
    double wy = 0;
    double wxy = 0;
    for (int i = from; i < own.length && beat[own[i]] <= knot + REACH_BEATS; i++) {
      double x = beat[own[i]] - knot;
      double u = Math.abs(x) / REACH_BEATS;
      double cube = 1 - u * u * u;
      double weight = trust[i] * cube * cube * cube;
      w += weight;
      wx += weight * x;
      wxx += weight * x * x;
      wy += weight * late[own[i]];
      wxy += weight * x * late[own[i]];
    }
    double det = w * wxx - wx * wx;
    return det > 1e-9 * w * w ? (wxx * wy - wx * wxy) / det : wy / w;
  }
}
