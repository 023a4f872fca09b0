package org.matraloom.pack;

import java.util.List;
import java.util.Optional;
import org.matraloom.breath.BreathSettings;
import org.matraloom.score.Composition;
import org.matraloom.sound.Sruti;
import org.matraloom.time.Ratio;

/**
 * What set is wanted.
 *
 * @param composition the score, at its full tempo
 * @param percents the tempi, in percent of the full one, each above 0 and up to 300; 1 to 12 of
 *     them
 * @param mixes the mixes of the whole piece, at least one
 * @param drills whether sections and joins are added, looped at the slowest tempo
 * @param countInAvartanas avartanas counted before each track, 1 to 4
 * @param sruti the tonic of a drone under all tracks
 * @param files which sound files are made
 * @param breaths how breaths are planned that are cued in every track; empty for none
 */
public record PackOrder(
    Composition composition,
    List<Ratio> percents,
    List<PackMix> mixes,
    boolean drills,
    int countInAvartanas,
    Optional<Sruti> sruti,
    PackFiles files,
    Optional<BreathSettings> breaths) {

  /**
   * The usual tempi: two that are published for practice tracks, 75 and 88 %, and a slower and the
   * full one.
   */
  public static final List<Ratio> USUAL_PERCENTS =
      List.of(Ratio.of(60), Ratio.of(75), Ratio.of(88), Ratio.of(100));

  /** The usual mixes: what one listens to, what one recites under, what one recites over. */
  public static final List<PackMix> USUAL_MIXES =
      List.of(PackMix.FULL, PackMix.VOICE, PackMix.TALA);

  private static final int MOST_TEMPI = 12;
  private static final Ratio HIGHEST_PERCENT = Ratio.of(300);

  /**
   * Puts tempi and mixes in order, each once.
   *
   * @throws IllegalArgumentException if a number is out of range
   */
  public PackOrder {
    percents = percents.stream().distinct().sorted().toList();
    mixes = mixes.stream().distinct().sorted().toList();
    if (percents.isEmpty() || percents.size() > MOST_TEMPI || mixes.isEmpty()) {
      throw new IllegalArgumentException(
          "a set has 1 to " + MOST_TEMPI + " tempi and a mix at least");
    }
    for (Ratio percent : percents) {
      if (percent.signum() <= 0 || percent.compareTo(HIGHEST_PERCENT) > 0) {
        throw new IllegalArgumentException(
            "a tempo is above 0 and up to 300 percent, given " + percent.toMixed());
      }
    }
    if (countInAvartanas < 1 || countInAvartanas > 4) {
      throw new IllegalArgumentException(
          "1 to 4 avartanas are counted in, given " + countInAvartanas);
    }
  }
}
