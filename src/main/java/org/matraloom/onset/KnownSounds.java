package org.matraloom.onset;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;

/**
 * What is known beforehand of sounds by their names, as of the sollus of a mouth that was recorded:
 * the colour of each, and how long after its release its vowel begins.
 *
 * <p>Another microphone or room adds the same to the colours of all sollus, in logarithms, so only
 * how they differ among themselves is used (as cepstral mean subtraction does: S. Furui, IEEE
 * Trans. Acoust. Speech Signal Process. 29 (1981) 254-272).
 */
public final class KnownSounds {

  /** Nothing is known. */
  public static final KnownSounds NONE = new KnownSounds(Map.of(), Map.of());

  private final Map<String, double[]> colours;
  private final Map<String, Double> lagSeconds;

  private KnownSounds(Map<String, double[]> colours, Map<String, Double> lagSeconds) {
    this.colours = colours;
    this.lagSeconds = lagSeconds;
  }

  /**
   * A recorded sound.
   *
   * @param sound its name
   * @param colour its colour at its release, as of {@link SoundLevels#colour}
   * @param lagSeconds how long after the release its beat is felt
   */
  public record Heard(String sound, double[] colour, double lagSeconds) {}

  /**
   * Learns from recorded sounds.
   *
   * @param heard any number of each
   * @return what is known then
   */
  public static KnownSounds of(Collection<Heard> heard) {
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
    return new KnownSounds(colours, lags);
  }

  /**
   * Whether nothing is known.
   *
   * @return true if there is no sound
   */
  public boolean isUnknown() {
    return colours.isEmpty();
  }

  /**
   * The lag of a sound.
   *
   * @param name its name
   * @param usualSeconds the lag where it is not known
   * @return seconds from the release to the vowel
   */
  public double lagSeconds(String name, double usualSeconds) {
    return lagSeconds.getOrDefault(name, usualSeconds);
  }

  /**
   * The colour of a sound.
   *
   * @param name its name
   * @param numbers how many numbers a colour of the take has; that of a recording with more bands
   *     is cut to it
   * @return so many numbers; none if it is not known, or known in fewer bands
   */
  public double[] colour(String name, int numbers) {
    double[] known = colours.getOrDefault(name, new double[0]);
    return known.length >= numbers ? cut(known, numbers) : new double[0];
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
