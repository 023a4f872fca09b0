package org.matraloom.onset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.matraloom.pulse.RobustStatistics;

/**
 * Makes one onset of the hum of a voiced stop and its release.
 *
 * <p>Many mouths hum for a tenth of a second and more before a <i>d</i> or <i>g</i> is released;
 * both moments may look like beginnings, and an onset is the release. A stroke that rings until the
 * next one has a burst of its own and dies away; a hum has none and is level.
 *
 * <p>The figures were chosen on spoken words of speakers that the net was not trained on.
 */
final class HumJoin {

  /** A hum lasts at most 148 ms. */
  private static final int LONGEST_STEPS = 37;

  /** Nearer than this two moments lie in the same window, and nothing is between them. */
  private static final int SHORTEST_STEPS = 9;

  /** So many steps around a moment belong to it: the length of a window and more. */
  private static final int BLUR_STEPS = 4;

  /** What comes with a moment is looked for over so many steps. */
  private static final int AFTER_STEPS = 12;

  /** The lowest bands, up to 700 Hz, carry the hum. */
  private static final int HUM_BANDS = 5;

  /** The hum is so much stronger than all that is above it, in decibels. */
  private static final double HUM_DB = 10;

  /** The release is so much louder than what lies before, in decibels. */
  private static final double LEAST_RISE_DB = 8;

  /** Above the hum the release is so much louder than the beginning of the hum, in decibels. */
  private static final double LEAST_BURST_DB = 16;

  /** A hum never falls so far below its middle, nor from its highest to its end, in decibels. */
  private static final double LARGEST_FALL_DB = 9;

  private static final double SMALLEST_ENERGY = 1e-12;

  private final BandEnergies energies;

  HumJoin(BandEnergies energies) {
    this.energies = energies;
  }

  /**
   * Leaves out the beginnings of hums; their odds are added to those of the release.
   *
   * @param peaks in order of time
   * @return in order of time
   */
  List<OnsetPeaks.Peak> joined(List<OnsetPeaks.Peak> peaks) {
    List<OnsetPeaks.Peak> joined = new ArrayList<>();
    for (OnsetPeaks.Peak peak : peaks) {
      double confidence = peak.confidence();
      for (int i = joined.size() - 1; i >= 0; i--) {
        int steps = peak.step() - joined.get(i).step();
        if (steps > LONGEST_STEPS) {
          break;
        }
        if (steps >= SHORTEST_STEPS && isHum(joined.get(i).step(), peak.step())) {
          confidence += joined.remove(i).confidence();
        }
      }
      joined.add(peak.withConfidence(Math.min(1, confidence)));
    }
    return joined;
  }

  /**
   * Whether nothing but a level hum lies between two steps, at the second of which it is released.
   */
  private boolean isHum(int from, int release) {
    int all = energies.usedBands();
    int begin = from + BLUR_STEPS;
    int end = release - BLUR_STEPS + 1;
    double[] hum = levelsDb(begin, end, 0, HUM_BANDS);
    double middle = RobustStatistics.median(hum);
    return middle > RobustStatistics.median(levelsDb(begin, end, HUM_BANDS, all)) + HUM_DB
        && Arrays.stream(hum).min().orElse(middle) > middle - LARGEST_FALL_DB
        && levelsDb(release - BLUR_STEPS - 1, release - BLUR_STEPS, 0, HUM_BANDS)[0]
            > highestDb(from, 0, HUM_BANDS) - LARGEST_FALL_DB
        && Arrays.stream(levelsDb(begin, end, 0, all)).max().orElse(middle)
            < highestDb(release, 0, all) - LEAST_RISE_DB
        && highestDb(from - BLUR_STEPS, HUM_BANDS, all)
            < highestDb(release - BLUR_STEPS, HUM_BANDS, all) - LEAST_BURST_DB;
  }

  private double highestDb(int from, int firstBand, int endBand) {
    return Arrays.stream(levelsDb(from, from + AFTER_STEPS, firstBand, endBand))
        .max()
        .orElseThrow();
  }

  /** The energy of some bands together at each of some steps, in decibels. */
  private double[] levelsDb(int from, int end, int firstBand, int endBand) {
    return IntStream.range(from, end)
        .map(step -> Math.max(0, Math.min(energies.steps() - 1, step)))
        .mapToDouble(
            step ->
                10
                    * StrictMath.log10(
                        IntStream.range(firstBand, endBand)
                                .mapToDouble(band -> energies.energy(step, band))
                                .sum()
                            + SMALLEST_ENERGY))
        .toArray();
  }
}
