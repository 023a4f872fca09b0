package org.matraloom.follow;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;
import org.matraloom.pulse.RobustStatistics;

/**
 * Learns from a pairing how its performer speaks: how long before its beat each sollu is heard, and
 * how evenly.
 *
 * <p>What is late about the sounds around it (a running mean without outliers, which follows any
 * pulse; a median would flip between two kinds of sollus) is laid to the sollu, sweep by sweep, as
 * in a median polish (J. W. Tukey, Exploratory Data Analysis, 1977, chapter 11).
 */
final class PairingLessons {

  /** The running mean reaches over so many sounds to each side. */
  private static final int REACH = 12;

  private static final int SWEEPS = 5;

  /** No sound counts for more in the mean of those around. */
  private static final double CLIPPED_SECONDS = 0.08;

  /** The tempo is taken from sollus so many places apart. */
  private static final int APART = 8;

  /** What is farther from the sounds around it says nothing about a sollu. */
  private static final double FARTHEST_SECONDS = 0.10;

  /** The usual lag counts like so many sounds. */
  private static final double USUAL_WEIGHT = 4;

  /** Of fewer sounds nothing is learnt: one that is late may be the fault that is looked for. */
  private static final int LEAST_HEARD = 3;

  private static final double LEAST_SPREAD_SECONDS = 0.012;
  private static final double MOST_SPREAD_SECONDS = 0.040;

  /** An interval has a later and an earlier end, and the pulse before it is not sure either. */
  private static final double OF_INTERVAL = 1.5;

  private final double[] expected;
  private final int[] sollus;
  private final int[] inTurn;
  private final SoundColours colours;
  private final List<Onset> onsets;

  /**
   * Prepares to learn.
   *
   * @param expected when each sollu falls in the score, in seconds at its tempo
   * @param kinds which sollu each place of the score asks for, from 0
   * @param onsets what was heard
   * @param colours how each onset sounds
   */
  PairingLessons(double[] expected, int[] kinds, List<Onset> onsets, SoundColours colours) {
    this.expected = expected;
    this.sollus = kinds;
    this.inTurn = SoundEvidence.inTurn(kinds.length);
    this.onsets = onsets;
    this.colours = colours;
  }

  /**
   * Learns.
   *
   * @param said a pairing; taken to be right in the main
   * @param before what was known before
   * @return what is known then
   */
  PairingModel learn(List<Alignment.Said> said, PairingModel before) {
    if (said.size() < 2) {
      return before;
    }
    int[] kinds = SoundEvidence.kinds(colours, sollus, inTurn, said);
    double stretch = stretchOf(said, before.stretch());
    int count = said.size();
    double[] late = new double[count];
    int[] run = new int[count];
    for (int i = 0; i < count; i++) {
      Alignment.Said each = said.get(i);
      boolean anew = i > 0 && each.sollu() <= said.get(i - 1).sollu();
      run[i] = i == 0 ? 0 : run[i - 1] + (anew ? 1 : 0);
      late[i] = onsets.get(each.onset()).seconds() - stretch * expected[each.sollu()];
    }
    int most = Arrays.stream(kinds).max().orElse(0) + 1;
    double[] ofKind = new double[most];
    int[] heard = new int[most];
    said.forEach(each -> heard[kinds[each.sollu()]]++);
    double[] usual = usual(before.lagSeconds(), kinds, heard);
    for (int kind = 0; kind < most; kind++) {
      ofKind[kind] = -usual[kind];
    }
    double[] rest = new double[count];
    double[] middle = new double[count];
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      double[] even = new double[count];
      for (int i = 0; i < count; i++) {
        even[i] = late[i] - ofKind[kinds[said.get(i).sollu()]];
      }
      for (int i = 0; i < count; i++) {
        int[] near = near(run, i);
        middle[i] =
            sweep == 0
                ? RobustStatistics.median(Arrays.copyOfRange(even, near[0], near[1]))
                : middle[i];
        middle[i] = clippedMean(even, near, middle[i]);
        rest[i] = late[i] - middle[i];
      }
      for (int kind = 0; kind < most; kind++) {
        int which = kind;
        double[] own =
            IntStream.range(0, count)
                .filter(i -> kinds[said.get(i).sollu()] == which)
                .mapToDouble(i -> rest[i])
                .filter(off -> Math.abs(off) < FARTHEST_SECONDS)
                .toArray();
        double weight = own.length < LEAST_HEARD ? 0 : own.length / (own.length + USUAL_WEIGHT);
        ofKind[kind] = weight * RobustStatistics.median(own) - (1 - weight) * usual[kind];
      }
    }
    double[] left = new double[count];
    for (int i = 0; i < count; i++) {
      left[i] = rest[i] - ofKind[kinds[said.get(i).sollu()]];
    }
    double[] lags = new double[kinds.length];
    double[] slack = new double[kinds.length];
    for (int k = 0; k < lags.length; k++) {
      lags[k] = -ofKind[kinds[k]];
      slack[k] = before.slackSeconds()[k] * USUAL_WEIGHT / (USUAL_WEIGHT + heard[kinds[k]]);
    }
    double spread = OF_INTERVAL * RobustStatistics.spreadAroundZero(left);
    return new PairingModel(
        stretch,
        lags,
        slack,
        0,
        Math.max(LEAST_SPREAD_SECONDS, Math.min(MOST_SPREAD_SECONDS, spread)),
        true,
        SolluModels.of(colours, kinds, said));
  }

  /** How much the sounds of a pairing speak for it as a whole, as sollus or as sounds in turn. */
  double evidence(List<Alignment.Said> said) {
    return Math.max(
        SoundEvidence.of(colours, sollus, said), SoundEvidence.of(colours, inTurn, said));
  }

  /** Whether the sounds of a pairing are more alike, sollu by sollu or in turn, than by chance. */
  boolean areAlike(List<Alignment.Said> said) {
    return SoundEvidence.ofLikeness(colours, sollus, said) > 0
        || SoundEvidence.ofLikeness(colours, inTurn, said) > 0;
  }

  /** How much the letters of the score speak for a pairing; a logarithm, at least 0. */
  double asLettersSay(List<Alignment.Said> said) {
    return colours.asLettersSay(sollus, said);
  }

  /**
   * The usual lags about their mean over what was heard, as it is from there that they are learnt.
   */
  private static double[] usual(double[] lags, int[] kinds, int[] heard) {
    double[] usual = new double[heard.length];
    int[] asked = new int[heard.length];
    for (int k = 0; k < kinds.length; k++) {
      asked[kinds[k]]++;
      usual[kinds[k]] += (lags[k] - usual[kinds[k]]) / asked[kinds[k]];
    }
    double mean =
        IntStream.range(0, heard.length).mapToDouble(kind -> usual[kind] * heard[kind]).sum()
            / Math.max(1, IntStream.of(heard).sum());
    return Arrays.stream(usual).map(lag -> lag - mean).toArray();
  }

  /** The sounds about one, as many before it as after it where that is possible. */
  private static int[] near(int[] run, int i) {
    int from = i;
    int to = i + 1;
    while (from > 0 && i - from < REACH && run[from - 1] == run[i]) {
      from--;
    }
    while (to < run.length && to - i <= REACH && run[to] == run[i]) {
      to++;
    }
    int reach = Math.min(i - from, to - 1 - i);
    return reach < 2 ? new int[] {from, to} : new int[] {i - reach, i + reach + 1};
  }

  /** How late the sounds from one to before another are as a rule. */
  private static double clippedMean(double[] late, int[] near, double middle) {
    double sum = 0;
    for (int i = near[0]; i < near[1]; i++) {
      sum += Math.max(middle - CLIPPED_SECONDS, Math.min(middle + CLIPPED_SECONDS, late[i]));
    }
    return sum / (near[1] - near[0]);
  }

  /**
   * How much slower than the score the take is: the median over pairs so far apart that lags hardly
   * matter.
   */
  private double stretchOf(List<Alignment.Said> said, double guess) {
    double[] ratios = new double[said.size()];
    int count = 0;
    int apart = Math.min(APART, said.size() / 2);
    for (int i = apart; i < said.size(); i++) {
      Alignment.Said from = said.get(i - apart);
      Alignment.Said to = said.get(i);
      double asked = expected[to.sollu()] - expected[from.sollu()];
      double took = onsets.get(to.onset()).seconds() - onsets.get(from.onset()).seconds();
      if (asked > 0 && Math.abs(took / asked / guess - 1) < 0.2) {
        ratios[count++] = took / asked;
      }
    }
    return count == 0 ? guess : RobustStatistics.median(Arrays.copyOf(ratios, count));
  }
}
