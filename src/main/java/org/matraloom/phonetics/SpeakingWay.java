package org.matraloom.phonetics;

import java.util.Arrays;

/**
 * One way of how mouths may speak: as the letters say, with other vowels, or anyhow; and how much
 * mouths that do so differ.
 *
 * <p>The axes are such that sounds of one recording vary by 1 on each, and the recordings of
 * different mouths by {@code between}, all independent of one another.
 *
 * @param share how many mouths speak so, 0 to 1
 * @param consonants whether the consonants are those of the letters
 * @param vowels whether the vowels are
 * @param between the variance between mouths on each axis
 * @param axes the axes, in the numbers of a colour
 */
record SpeakingWay(
    double share, boolean consonants, boolean vowels, double[] between, double[][] axes) {

  /** A colour on the axes. */
  double[] turned(double[] colour) {
    double[] turned = new double[axes.length];
    for (int a = 0; a < axes.length; a++) {
      for (int d = 0; d < colour.length; d++) {
        turned[a] += axes[a][d] * colour[d];
      }
    }
    return turned;
  }

  /** What the scale of the axes adds to the logarithm of every density. */
  double logScale() {
    double[][] left = Arrays.stream(axes).map(double[]::clone).toArray(double[][]::new);
    double log = 0;
    for (int column = 0; column < left.length; column++) {
      int pivot = column;
      for (int row = column + 1; row < left.length; row++) {
        pivot = Math.abs(left[row][column]) > Math.abs(left[pivot][column]) ? row : pivot;
      }
      double[] top = left[pivot];
      left[pivot] = left[column];
      left[column] = top;
      log += Math.log(Math.abs(top[column]));
      for (int row = column + 1; row < left.length; row++) {
        double times = left[row][column] / top[column];
        for (int d = column; d < left.length; d++) {
          left[row][d] -= times * top[d];
        }
      }
    }
    return log;
  }
}
