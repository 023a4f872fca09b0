package org.matraloom.pulse;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * A straight line through felt beats, with one bend of a given shape if there is any, and a
 * beginning of its own for each run.
 *
 * <p>Fitted by least squares, reweighted with the biweight of A. E. Beaton and J. W. Tukey,
 * Technometrics 16 (1974) 147-185, so that single sollus elsewhere do not count.
 */
public final class BentFit {

  /** No bend: the tempo is even. */
  public static final DoubleUnaryOperator STRAIGHT = beat -> 0;

  private static final double BIWEIGHT = 4.685;
  private static final double LEAST_SCALE_SECONDS = 0.004;
  private static final int ROUNDS = 20;

  /** A number that the others leave less of than this share is told by them. */
  private static final double LEAST_PIVOT = 1e-9;

  private final double[] beat;
  private final double[] seconds;
  private final int[] run;
  private final DoubleUnaryOperator bend;
  private final int runs;
  private final double middle;
  private double[][] inverse;
  private double[] found;
  private double[] off;

  private BentFit(double[] beat, double[] seconds, int[] run, DoubleUnaryOperator bend) {
    this.beat = beat;
    this.seconds = seconds;
    this.run = run;
    this.bend = bend;
    this.runs = Arrays.stream(run).max().orElse(1);
    this.middle = Arrays.stream(beat).average().orElse(0);
  }

  /**
   * Fits.
   *
   * @param beat where each sollu stands, in beats; at least one
   * @param seconds when its beat was felt
   * @param run its run, from 1
   * @param bend the shape of the bend, over beats; {@link #STRAIGHT} of none
   * @return the fit
   */
  public static BentFit of(double[] beat, double[] seconds, int[] run, DoubleUnaryOperator bend) {
    BentFit fit = new BentFit(beat.clone(), seconds.clone(), run.clone(), bend);
    double[] weight = new double[beat.length];
    Arrays.fill(weight, 1);
    for (int round = 0; round < ROUNDS; round++) {
      fit.solve(weight);
      double scale = Math.max(LEAST_SCALE_SECONDS, RobustStatistics.spreadAroundZero(fit.off));
      for (int i = 0; i < weight.length; i++) {
        double u = fit.off[i] / (BIWEIGHT * scale);
        weight[i] = Math.abs(u) < 1 ? (1 - u * u) * (1 - u * u) : 0;
      }
    }
    return fit;
  }

  /**
   * How far the sollus are off, in their order.
   *
   * @return seconds, positive if late
   */
  public double[] offSeconds() {
    return off.clone();
  }

  /**
   * How many beginnings were found.
   *
   * @return at least 1
   */
  public int runs() {
    return runs;
  }

  /**
   * When a beat falls, with so much of the bend as there is at another.
   *
   * @param at beats
   * @param bent at which beat the bend is taken
   * @param ofRun the run, from 1
   * @return seconds
   */
  public double secondsAt(double at, double bent, int ofRun) {
    double[] row = row(at, bent, ofRun);
    return IntStream.range(0, row.length).mapToDouble(i -> row[i] * found[i]).sum();
  }

  /**
   * The variance of the same, as a share of that of a single sollu.
   *
   * @param at beats
   * @param bent at which beat the bend is taken
   * @param ofRun the run, from 1
   * @return the share, at least 0
   */
  public double share(double at, double bent, int ofRun) {
    double[] row = row(at, bent, ofRun);
    double sum = 0;
    for (int i = 0; i < row.length; i++) {
      for (int j = 0; j < row.length; j++) {
        sum += row[i] * inverse[i][j] * row[j];
      }
    }
    return Math.max(0, sum);
  }

  /** The numbers a moment is made of: its place, the bend, and which run. */
  private double[] row(double at, double bent, int ofRun) {
    double[] row = new double[2 + runs];
    row[0] = at - middle;
    row[1] = bend.applyAsDouble(bent);
    row[1 + ofRun] = 1;
    return row;
  }

  private void solve(double[] weight) {
    int size = 2 + runs;
    double[][] normal = new double[size][size];
    double[] right = new double[size];
    double[][] rows = new double[beat.length][];
    for (int k = 0; k < beat.length; k++) {
      rows[k] = row(beat[k], beat[k], run[k]);
      for (int i = 0; i < size; i++) {
        right[i] += weight[k] * rows[k][i] * seconds[k];
        for (int j = 0; j < size; j++) {
          normal[i][j] += weight[k] * rows[k][i] * rows[k][j];
        }
      }
    }
    inverse = inverted(normal);
    found = new double[size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        found[i] += inverse[i][j] * right[j];
      }
    }
    off = new double[beat.length];
    for (int k = 0; k < off.length; k++) {
      off[k] = seconds[k];
      for (int i = 0; i < size; i++) {
        off[k] -= rows[k][i] * found[i];
      }
    }
  }

  /**
   * The inverse of a symmetric matrix by Gauss-Jordan sweeps; a row that the others tell is left
   * out, as if its number were known to be 0.
   */
  private static double[][] inverted(double[][] matrix) {
    int size = matrix.length;
    double[] whole = IntStream.range(0, size).mapToDouble(i -> matrix[i][i]).toArray();
    boolean[] swept = new boolean[size];
    double[][] swap = matrix;
    for (int k = size - 1; k >= 0; k--) {
      double pivot = swap[k][k];
      if (pivot > LEAST_PIVOT * whole[k] && pivot > 0) {
        swap = swept(swap, k);
        swept[k] = true;
      }
    }
    double[][] inverse = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        inverse[i][j] = swept[i] && swept[j] ? -swap[i][j] : 0;
      }
    }
    return inverse;
  }

  private static double[][] swept(double[][] a, int k) {
    int size = a.length;
    double[][] b = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        if (i == k && j == k) {
          b[i][j] = -1 / a[k][k];
        } else if (i == k || j == k) {
          b[i][j] = a[i][j] / a[k][k];
        } else {
          b[i][j] = a[i][j] - a[i][k] * a[k][j] / a[k][k];
        }
      }
    }
    return b;
  }
}
