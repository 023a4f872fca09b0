package org.matraloom.follow;

import java.util.Arrays;
import java.util.List;

/**
 * How the sollus of a take sound, learnt from a pairing: for each sollu the mean of its colours,
 * and the spread about the means, one for all sollus. Both are drawn towards what is known
 * beforehand where little was heard (probabilistic linear discriminant analysis: S. Ioffe, Proc.
 * ECCV (2006) 531-542), so that a take of a few words is neither too sure of its sollus nor of what
 * is none.
 */
final class SolluModels {

  /** The numbers of a colour are not independent: their sum counts for this share. */
  private static final double TRUST = 0.35;

  /** No single sound says more than this for a sollu, or against it. */
  private static final double MOST_FOR = 1.5;

  private static final double MOST_AGAINST = -1.5;

  /** So much of all variance is taken to be within a sollu, and that counts like so many sounds. */
  private static final double USUAL_WITHIN = 0.4;

  private static final double USUAL_SOUNDS = 30;

  /** Sollus differ at least by this share of all variance. */
  private static final double LEAST_BETWEEN = 0.1;

  /** A sollu that was heard less often is not known. */
  private static final int LEAST_HEARD = 3;

  private static final double LEAST_VARIANCE = 1e-6;

  /** What is known of a sollu beforehand counts like so many sounds of it. */
  private static final int KNOWN_SOUNDS = 4;

  /** For each kind of sollu and each onset; an empty row says nothing. */
  private final double[][] gain;

  private final int[] kinds;

  private SolluModels(double[][] gain, int[] kinds) {
    this.gain = gain;
    this.kinds = kinds;
  }

  /**
   * Nothing is known.
   *
   * @param sollus how many the score has
   */
  static SolluModels unknown(int sollus) {
    return new SolluModels(new double[1][0], new int[sollus]);
  }

  /**
   * Learns.
   *
   * @param colours how each onset sounds
   * @param kinds which sollu each place of the score asks for, from 0
   * @param said a pairing
   */
  static SolluModels of(SoundColours colours, int[] kinds, List<Alignment.Said> said) {
    int size = colours.size();
    int most = Arrays.stream(kinds).max().orElse(0) + 1;
    double[][] gain = new double[most][0];
    double[][] sums = new double[most][size];
    int[] counts = new int[most];
    for (Alignment.Said each : said) {
      int kind = kinds[each.sollu()];
      counts[kind]++;
      add(sums[kind], colours.ofOnset()[each.onset()], 1);
    }
    double[] mean = new double[size];
    for (double[] sum : sums) {
      add(mean, sum, 1.0 / Math.max(1, said.size()));
    }
    double[][] before = colours.knownAbout(kinds, counts, mean);
    int[] sure = new int[most];
    Arrays.setAll(sure, kind -> counts[kind] + (before[kind].length > 0 ? KNOWN_SOUNDS : 0));
    long known = Arrays.stream(sure).filter(count -> count >= LEAST_HEARD).count();
    if (size == 0 || said.size() < 2 || known < 2) {
      return new SolluModels(gain, kinds);
    }
    double[] total = new double[size];
    double[] within = new double[size];
    double free = LEAST_VARIANCE;
    for (Alignment.Said each : said) {
      int kind = kinds[each.sollu()];
      double[] colour = colours.ofOnset()[each.onset()];
      for (int d = 0; d < size; d++) {
        double off = colour[d] - mean[d];
        total[d] += off * off / said.size();
        if (counts[kind] >= LEAST_HEARD) {
          double own = colour[d] - sums[kind][d] / counts[kind];
          within[d] += own * own;
        }
      }
      free += counts[kind] >= LEAST_HEARD ? 1 - 1.0 / counts[kind] : 0;
    }
    for (int d = 0; d < size; d++) {
      total[d] = Math.max(LEAST_VARIANCE, total[d]);
      double usual = USUAL_SOUNDS * USUAL_WITHIN * total[d];
      within[d] = Math.min(total[d], (usual + within[d]) / (USUAL_SOUNDS + free));
    }
    for (int kind = 0; kind < most; kind++) {
      if (before[kind].length > 0) {
        add(sums[kind], before[kind], KNOWN_SOUNDS);
      }
      if (sure[kind] >= LEAST_HEARD) {
        double[] middle = new double[size];
        double[] spread = new double[size];
        for (int d = 0; d < size; d++) {
          double between = Math.max(LEAST_BETWEEN * total[d], total[d] - within[d]);
          double doubt = within[d] / (within[d] + sure[kind] * between);
          middle[d] = mean[d] + (1 - doubt) * (sums[kind][d] / sure[kind] - mean[d]);
          spread[d] = within[d] + between * doubt;
        }
        gain[kind] = gains(colours, middle, mean, spread, total);
      }
    }
    return new SolluModels(gain, kinds);
  }

  /**
   * How much the sound of an onset speaks for a sollu.
   *
   * @param place a place of the score
   * @param onset an onset
   * @return the likelihood against that of any sound, its logarithm; 0 if nothing is known
   */
  double gain(int place, int onset) {
    double[] row = gain[kinds[place]];
    return row.length == 0 ? 0 : bounded(row[onset]);
  }

  /** Whether it is known how the sollu of a place sounds. */
  boolean isKnown(int place) {
    return gain[kinds[place]].length > 0;
  }

  /** Whether an onset sounds like any of the sollus; true if nothing is known. */
  boolean isLikeAny(int onset) {
    return Arrays.stream(gain).allMatch(row -> row.length == 0)
        || Arrays.stream(gain).anyMatch(row -> row.length > 0 && row[onset] > 0);
  }

  /** By how much an onset sounds like the likest of the sollus; 0 if nothing is known. */
  double likest(int onset) {
    return bounded(likestOfAll(onset));
  }

  /** The same without a bound to what a single sound may say. */
  double likestOfAll(int onset) {
    return Arrays.stream(gain)
        .filter(row -> row.length > 0)
        .mapToDouble(row -> row[onset])
        .max()
        .orElse(0);
  }

  /** By how much an onset is less like a sollu than like the likest; 0 if that is not known. */
  double fallsShort(int place, int onset) {
    double[] row = gain[kinds[place]];
    return row.length == 0 ? 0 : likestOfAll(onset) - row[onset];
  }

  private static double bounded(double gain) {
    return Math.max(MOST_AGAINST, Math.min(MOST_FOR, gain));
  }

  private static double[] gains(
      SoundColours colours, double[] middle, double[] mean, double[] within, double[] total) {
    double[] gains = new double[colours.ofOnset().length];
    double[] wider = new double[total.length];
    for (int d = 0; d < total.length; d++) {
      wider[d] = Math.log(total[d] / within[d]);
    }
    for (int j = 0; j < gains.length; j++) {
      double[] colour = colours.ofOnset()[j];
      double sum = 0;
      for (int d = 0; d < colour.length; d++) {
        double own = colour[d] - middle[d];
        double any = colour[d] - mean[d];
        sum += any * any / total[d] - own * own / within[d] + wider[d];
      }
      gains[j] = TRUST * sum / 2;
    }
    return gains;
  }

  private static void add(double[] sum, double[] more, double times) {
    for (int d = 0; d < sum.length; d++) {
      sum[d] += times * more[d];
    }
  }
}
