package org.matraloom.follow;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.onset.SoundLevels;

/**
 * What is known beforehand of how a mouth says its sollus, from a recording of them: the colour of
 * each, and how long after its release its vowel begins.
 *
 * <p>Another microphone or room adds the same to the colours of all sollus, in logarithms, so only
 * how they differ among themselves is used (as cepstral mean subtraction does: S. Furui, IEEE
 * Trans. Acoust. Speech Signal Process. 29 (1981) 254-272).
 */
public final class KnownMouth {

  /** Nothing is known. */
  public static final KnownMouth NONE = new KnownMouth(Map.of(), Map.of());

  private final Map<String, double[]> colours;
  private final Map<String, Double> lagSeconds;

  private KnownMouth(Map<String, double[]> colours, Map<String, Double> lagSeconds) {
    this.colours = colours;
    this.lagSeconds = lagSeconds;
  }

  /**
   * A recorded sollu.
   *
   * @param sound the lexicon's name of its sound
   * @param colour its colour at its release, as of {@link SoundLevels#colour}
   * @param lagSeconds how long after the release its beat is felt
   */
  public record Heard(String sound, double[] colour, double lagSeconds) {}

  /**
   * Learns from recorded sollus.
   *
   * @param heard any number of each
   * @return what is known then
   */
  public static KnownMouth of(Collection<Heard> heard) {
    Map<String, double[]> colours = new HashMap<>();
    Map<String, Double> lags = new HashMap<>();
    Map<String, Integer> counts = new HashMap<>();
    for (Heard each : heard) {
      int count = counts.merge(each.sound, 1, Integer::sum);
      double[] mean = colours.computeIfAbsent(each.sound, name -> new double[each.colour.length]);
      for (int d = 0; d < mean.length; d++) {
        mean[d] += (each.colour[d] - mean[d]) / count;
      }
      lags.merge(each.sound, each.lagSeconds, (before, now) -> before + (now - before) / count);
    }
    return new KnownMouth(colours, lags);
  }

  /** Whether nothing is known. */
  boolean isUnknown() {
    return colours.isEmpty();
  }

  /** The lag of a sollu, in seconds; the usual one where it is not known. */
  double lagSeconds(ExpectedSollu asked, double usualSeconds) {
    return lagSeconds.getOrDefault(asked.sollu().sound(), usualSeconds);
  }

  /**
   * The colour of each kind of sollu of a score.
   *
   * @param asked the sollus of the score
   * @param kinds which kind each is, from 0
   * @param numbers how many numbers a colour of the take has; those of a recording with more bands
   *     are cut to it
   * @return a row for each kind; an empty one for what is not known
   */
  double[][] ofKinds(List<ExpectedSollu> asked, int[] kinds, int numbers) {
    int most = 0;
    for (int kind : kinds) {
      most = Math.max(most, kind + 1);
    }
    double[][] rows = new double[most][0];
    for (int k = 0; k < kinds.length; k++) {
      double[] known = colours.getOrDefault(asked.get(k).sollu().sound(), new double[0]);
      if (known.length >= numbers) {
        rows[kinds[k]] = cut(known, numbers);
      }
    }
    return rows;
  }

  /** The lower bands of each part, about their own mean. */
  private static double[] cut(double[] colour, int numbers) {
    int own = colour.length / SoundLevels.COLOUR_PARTS;
    int bands = numbers / SoundLevels.COLOUR_PARTS;
    double[] cut = new double[numbers];
    for (int part = 0; part < SoundLevels.COLOUR_PARTS; part++) {
      double mean = 0;
      for (int band = 0; band < bands; band++) {
        mean += colour[part * own + band] / bands;
      }
      for (int band = 0; band < bands; band++) {
        cut[part * bands + band] = colour[part * own + band] - mean;
      }
    }
    return cut;
  }
}
