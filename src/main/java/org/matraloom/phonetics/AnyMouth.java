package org.matraloom.phonetics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.score.SolluSound;

/**
 * What is known of how sollus sound before anything of a mouth was heard: a <em>mi</em> hums and is
 * bright, a <em>ka</em> bursts and is open, in any mouth.
 *
 * <p>The mean colour of each sollu in a mouth is drawn about the sum of what its consonant and its
 * vowel add, with the variance that is found between mouths; what microphone, room and mouth add to
 * all of them is taken off (linear models of speakers with a variance between and one within: S.
 * Ioffe, Proc. ECCV (2006) 531-542; the mean over a take: S. Furui, IEEE Trans. Acoust. Speech
 * Signal Process. 29 (1981) 254-272). A mouth may also say the consonants with other vowels, or say
 * something else altogether (strokes, other words): these are ways to speak of their own, so that a
 * take that fits the letters in no order hears nothing from here.
 */
public final class AnyMouth {

  /** A colour is not as normally distributed as that: its likelihoods count for this share. */
  private static final double TRUST = 0.8;

  /** Nobody knows how anything sounds. */
  public static final AnyMouth UNKNOWN = new AnyMouth(List.of(), 0, 0);

  private final List<Turned> ways;
  private final double anyhow;
  private final int kinds;

  private AnyMouth(List<Turned> ways, double anyhow, int kinds) {
    this.ways = ways;
    this.anyhow = anyhow;
    this.kinds = kinds;
  }

  /** The colours of a take and the centres of its kinds on the axes of one way to speak. */
  private record Turned(SpeakingWay way, double logScale, double[][] colours, double[][] centres) {}

  /**
   * What is known of the sounds of a take.
   *
   * @param sounds how each kind of sollu is said, if the lexicon knows
   * @param colours a row of cepstra for each onset
   * @return what is known; {@link #UNKNOWN} if a kind is not known, there is nothing to tell apart,
   *     or the recording has other bands than those that were learnt
   */
  public static AnyMouth of(List<Optional<SolluSound>> sounds, double[][] colours) {
    if (sounds.size() < 2 || sounds.stream().anyMatch(Optional::isEmpty) || colours.length == 0) {
      return UNKNOWN;
    }
    TraitTable table = TraitTable.load();
    if (colours[0].length != table.size()) {
      return UNKNOWN;
    }
    List<Turned> ways = new ArrayList<>();
    for (SpeakingWay way : table.ways()) {
      double[][] turned = new double[colours.length][];
      for (int j = 0; j < turned.length; j++) {
        turned[j] = way.turned(colours[j]);
      }
      double[][] centres = new double[sounds.size()][];
      for (int kind = 0; kind < centres.length; kind++) {
        centres[kind] = way.turned(centre(table, way, sounds.get(kind).orElseThrow()));
      }
      ways.add(new Turned(way, way.logScale(), turned, centres));
    }
    return new AnyMouth(ways, Math.log(ways.get(ways.size() - 1).way.share()), sounds.size());
  }

  private static double[] centre(TraitTable table, SpeakingWay way, SolluSound sound) {
    double[] centre = new double[table.size()];
    for (String trait : PhoneTraits.of(sound, way.consonants(), way.vowels())) {
      double[] adds = table.ofTrait().getOrDefault(trait, new double[centre.length]);
      for (int d = 0; d < centre.length; d++) {
        centre[d] += adds[d];
      }
    }
    return centre;
  }

  /**
   * How much likelier the sounds are if they are these kinds than if their letters said nothing.
   *
   * @param kindOf the kind of each sound, from 0
   * @param onsetOf its onset, from 0; as many
   * @return a logarithm; at least 0, and 0 if nothing is known
   */
  public double evidence(int[] kindOf, int[] onsetOf) {
    if (ways.isEmpty() || kindOf.length < 2) {
      return 0;
    }
    double[] logs = ways.stream().mapToDouble(way -> log(way, kindOf, onsetOf)).toArray();
    double none = logs[logs.length - 1];
    double most = 0;
    for (double log : logs) {
      most = Math.max(most, TRUST * (log - none));
    }
    double sum = 0;
    for (int w = 0; w < logs.length; w++) {
      sum += ways.get(w).way.share() * Math.exp(TRUST * (logs[w] - none) - most);
    }
    return most + Math.log(sum) - anyhow;
  }

  /** The logarithm of the density of the means of all kinds, but for a constant of all ways. */
  private double log(Turned turned, int[] kindOf, int[] onsetOf) {
    int size = turned.way.axes().length;
    double[][] sums = new double[kinds][size];
    int[] counts = new int[kinds];
    double[] off = new double[size];
    for (int i = 0; i < kindOf.length; i++) {
      double[] colour = turned.colours[onsetOf[i]];
      double[] centre = turned.centres[kindOf[i]];
      counts[kindOf[i]]++;
      for (int d = 0; d < size; d++) {
        sums[kindOf[i]][d] += colour[d] - centre[d];
        off[d] += (colour[d] - centre[d]) / kindOf.length;
      }
    }
    double log = 0;
    for (int kind = 0; kind < kinds; kind++) {
      if (counts[kind] > 0) {
        log += turned.logScale;
        for (int d = 0; d < size; d++) {
          double variance = turned.way.between()[d] + 1.0 / counts[kind];
          double rest = sums[kind][d] / counts[kind] - off[d];
          log -= (rest * rest / variance + Math.log(variance)) / 2;
        }
      }
    }
    return log;
  }
}
