package org.matraloom.follow;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How much the sounds of a take speak for a pairing as a whole: whether those put to one sollu are
 * alike, and unlike those put to others.
 *
 * <p>The logarithm of the likelihood of all colours with a mean of its own for each sollu, against
 * that of sounds without any order. The means are not known; they are drawn from a normal
 * distribution, as are the sounds about them (probabilistic linear discriminant analysis: S. Ioffe,
 * Proc. ECCV (2006) 531-542; S. J. D. Prince and J. H. Elder, Proc. ICCV (2007), 1-8). How much of
 * all variance is within a sollu is known beforehand, so that a few sounds of each are enough.
 * Unlike the sum of what single sounds say it is not bounded for each of them: words that repeat,
 * shifted by one, have some sollus of two sounds each beside others of one.
 */
final class SoundEvidence {

  /** Colours are neither normal nor independent of their neighbours in time. */
  private static final double TRUST = 0.16;

  /** So much of all variance is taken to be within a sollu: people vary more than recordings do. */
  private static final double WITHIN = 0.65;

  /** The same of a sollu about the place where it is known to be from a recording. */
  private static final double KNOWN_BETWEEN = 0.15;

  /** A recording says of no number that it is farther from the mean than so many deviations. */
  private static final double FARTHEST_KNOWN = 2;

  /** Of fewer sounds it is not known how they vary. */
  private static final int LEAST_SOUNDS = 8;

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
   * The evidence for a pairing: how much its sounds are alike, sollu by sollu, and how much they
   * are what their letters say.
   *
   * @param colours how each onset sounds
   * @param kinds which sollu each place of the score asks for, from 0
   * @param said the pairing
   * @return the logarithm of a likelihood against that of sounds without any order; at least 0
   */
  static double of(SoundColours colours, int[] kinds, List<Alignment.Said> said) {
    return ofLikeness(colours, kinds, said)
        + (said.size() < LEAST_SOUNDS ? 0 : colours.asLettersSay(kinds, said));
  }

  /** The same by how much sounds are alike only, whatever they are. */
  static double ofLikeness(SoundColours colours, int[] kinds, List<Alignment.Said> said) {
    int size = colours.size();
    int most = Arrays.stream(kinds).max().orElse(0) + 1;
    if (size == 0 || said.size() < LEAST_SOUNDS) {
      return 0;
    }
    double[][] sums = new double[most][size];
    int[] counts = new int[most];
    double[] mean = new double[size];
    double[] squares = new double[size];
    for (Alignment.Said each : said) {
      double[] colour = colours.ofOnset()[each.onset()];
      int kind = kinds[each.sollu()];
      double[] sum = sums[kind];
      counts[kind]++;
      for (int d = 0; d < size; d++) {
        sum[d] += colour[d];
        mean[d] += colour[d] / said.size();
        squares[d] += colour[d] * colour[d];
      }
    }
    double evidence = 0;
    double[][] known = colours.knownAbout(kinds, counts, mean);
    boolean isAnyKnown = Arrays.stream(known).anyMatch(centre -> centre.length > 0);
    for (int d = 0; d < size; d++) {
      double variance = squares[d] / said.size() - mean[d] * mean[d];
      if (variance > LEAST_VARIANCE) {
        double[] column = column(sums, d);
        evidence +=
            ofNumber(said.size(), counts, column, mean[d], variance)
                + (isAnyKnown ? ofKnown(counts, column, mean[d], variance, known, d) : 0);
      }
    }
    return Math.max(0, TRUST * evidence);
  }

  /**
   * What one number of all colours says. Of sounds of one sollu only their count and sum are asked:
   * the squares are the same in every order, but for their share.
   */
  private static double ofNumber(
      int sounds, int[] counts, double[] sums, double mean, double variance) {
    double between = 1 - WITHIN;
    double evidence = sounds * (1 - 1 / WITHIN) / 2;
    for (int kind = 0; kind < counts.length; kind++) {
      int count = counts[kind];
      if (count > 0) {
        double off = sums[kind] - count * mean;
        double spread = WITHIN + count * between;
        evidence += between * off * off / (2 * WITHIN * spread * variance);
        evidence -= ((count - 1) * Math.log(WITHIN) + Math.log(spread)) / 2;
      }
    }
    return evidence;
  }

  /**
   * What one number of all colours says besides where it is known beforehand about which centre the
   * sounds of a sollu lie: the same likelihood about that centre, in place of the one about the
   * mean of all.
   */
  private static double ofKnown(
      int[] counts, double[] sums, double mean, double variance, double[][] known, int number) {
    double more = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      int count = counts[kind];
      if (count > 0 && known[kind].length > 0) {
        double farthest = FARTHEST_KNOWN * Math.sqrt(variance);
        double moved = Math.max(-farthest, Math.min(farthest, known[kind][number] - mean));
        double off = sums[kind] - count * mean;
        double offCentre = off - count * moved;
        more += (2 * moved * off - count * moved * moved) / (2 * WITHIN * variance);
        more += shrunk(count, offCentre, KNOWN_BETWEEN, variance);
        more -= shrunk(count, off, 1 - WITHIN, variance);
      }
    }
    return more;
  }

  /** What the mean of the sounds of a sollu adds, drawn from about its centre. */
  private static double shrunk(int count, double off, double between, double variance) {
    double spread = WITHIN + count * between;
    return between * off * off / (2 * WITHIN * spread * variance) - Math.log(spread) / 2;
  }

  private static double[] column(double[][] sums, int number) {
    double[] column = new double[sums.length];
    Arrays.setAll(column, row -> sums[row][number]);
    return column;
  }
}
