package org.matraloom.follow;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How much the sounds of a take speak for a pairing as a whole: whether those put to one sollu are
 * alike, and unlike those put to others.
 *
 * <p>The logarithm of the likelihood of all colours with a mean of its own for each sollu against
 * one mean for all, with a covariance common to all sollus (Wilks' lambda: S. S. Wilks, Biometrika
 * 24 (1932) 471-494), drawn to its diagonal where there are few sounds (after O. Ledoit and M.
 * Wolf, J. Multivar. Anal. 88 (2004) 365-411), less what so many means would win by chance (G.
 * Schwarz, Ann. Stat. 6 (1978) 461-464). Unlike the sum of what single sounds say it is not bounded
 * for each of them: words that repeat, shifted by one, have some sollus of two sounds each beside
 * others of one.
 */
final class SoundEvidence {

  /** Colours are neither normal nor independent of their neighbours in time. */
  private static final double TRUST = 0.08;

  /** However alike the sounds of a sollu are, the next may differ by this share of all variance. */
  private static final double LEAST_SHARE = 0.1;

  /** Of fewer sounds for each of its numbers a covariance says nothing. */
  private static final double LEAST_SOUNDS = 1.5;

  /** Sounds are not more alike than this: of those that are the same none is told from another. */
  private static final double LEAST_VARIANCE = 1e-9;

  /** Fast syllables are practised three at a time. */
  private static final int IN_TURN = 3;

  private SoundEvidence() {}

  /**
   * The kinds of a take in which three sounds are said in turn (pa ta ka), whatever the sollus.
   *
   * @param sollus how many the score asks for
   * @return for each place the sound that is said there, from 0
   */
  static int[] inTurn(int sollus) {
    return IntStream.range(0, sollus).map(place -> place % IN_TURN).toArray();
  }

  /**
   * What the sounds of a pairing are: its sollus, or others in turn.
   *
   * @param colours how each onset sounds
   * @param sollus which sollu each place of the score asks for, from 0
   * @param inTurn the same of sounds in turn
   * @param said the pairing
   * @return the one or the other, whichever has more evidence; the sollus if it is the same
   */
  static int[] kinds(SoundColours colours, int[] sollus, int[] inTurn, List<Alignment.Said> said) {
    return of(colours, inTurn, said) > of(colours, sollus, said) ? inTurn : sollus;
  }

  /**
   * The evidence for a pairing.
   *
   * @param colours how each onset sounds
   * @param kinds which sollu each place of the score asks for, from 0
   * @param said the pairing
   * @return the logarithm of a likelihood against that of sounds without any order; at least 0
   */
  static double of(SoundColours colours, int[] kinds, List<Alignment.Said> said) {
    int size = colours.size();
    if (size == 0 || said.size() < LEAST_SOUNDS * size) {
      return 0;
    }
    int most = Arrays.stream(kinds).max().orElse(0) + 1;
    double[][] means = new double[most][size];
    int[] counts = new int[most];
    double[] mean = new double[size];
    for (Alignment.Said each : said) {
      double[] colour = colours.ofOnset()[each.onset()];
      int kind = kinds[each.sollu()];
      counts[kind]++;
      for (int d = 0; d < size; d++) {
        means[kind][d] += colour[d];
        mean[d] += colour[d] / said.size();
      }
    }
    long known = Arrays.stream(counts).filter(count -> count > 0).count();
    if (known < 2) {
      return 0;
    }
    double[][] total = new double[size][size];
    double[][] within = new double[size][size];
    for (Alignment.Said each : said) {
      double[] colour = colours.ofOnset()[each.onset()];
      int kind = kinds[each.sollu()];
      double[] any = new double[size];
      double[] own = new double[size];
      for (int d = 0; d < size; d++) {
        any[d] = colour[d] - mean[d];
        own[d] = colour[d] - means[kind][d] / counts[kind];
      }
      addSquare(total, any);
      addSquare(within, own);
    }
    double joint = Math.max(0, 1 - (double) size / said.size());
    for (int row = 0; row < size; row++) {
      for (int column = 0; column <= row; column++) {
        double share = row == column ? 1 : joint;
        double least = row == column ? LEAST_VARIANCE * said.size() : 0;
        total[row][column] = share * total[row][column] + least;
        within[row][column] =
            share * within[row][column] + least + LEAST_SHARE * total[row][column];
      }
    }
    double alike = logDeterminant(total) + size * Math.log1p(LEAST_SHARE) - logDeterminant(within);
    double byChance = (known - 1) * size * Math.log(said.size());
    return Math.max(0, TRUST * (said.size() * alike - byChance) / 2);
  }

  private static void addSquare(double[][] sums, double[] vector) {
    for (int row = 0; row < vector.length; row++) {
      for (int column = 0; column <= row; column++) {
        sums[row][column] += vector[row] * vector[column];
      }
    }
  }

  /** By Cholesky's decomposition; only the lower half of the matrix is read. */
  private static double logDeterminant(double[][] matrix) {
    int size = matrix.length;
    double[][] root = new double[size][size];
    double sum = 0;
    for (int row = 0; row < size; row++) {
      for (int column = 0; column <= row; column++) {
        double left = matrix[row][column];
        for (int k = 0; k < column; k++) {
          left -= root[row][k] * root[column][k];
        }
        if (row == column) {
          root[row][row] = Math.sqrt(Math.max(LEAST_VARIANCE, left));
          sum += 2 * Math.log(root[row][row]);
        } else {
          root[row][column] = left / root[column][column];
        }
      }
    }
    return sum;
  }
}
