package org.matraloom.follow;

import java.util.List;
import org.matraloom.onset.Onset;
import org.matraloom.onset.SoundLevels;

/**
 * How each sound of a take sounds, in few numbers: the burst and the vowel after it, each by the
 * lower cepstral coefficients of its mel bands (S. B. Davis and P. Mermelstein, IEEE Trans. Acoust.
 * Speech Signal Process. 28 (1980) 357-366), which hardly depend on one another.
 *
 * @param ofOnset the numbers for each onset; all empty if nothing is known of the sound
 */
record SoundColours(double[][] ofOnset) {

  /** The first coefficient is the level, which is left out; what lies above these is noise. */
  private static final int COEFFICIENTS = 9;

  /**
   * The colours of all onsets.
   *
   * @param levels the recording
   * @param onsets in order of time
   */
  static SoundColours of(SoundLevels levels, List<Onset> onsets) {
    double[][] colours = new double[onsets.size()][];
    double[][] waves = new double[0][];
    for (int j = 0; j < colours.length; j++) {
      double[] colour = levels.colour(onsets.get(j).seconds());
      int bands = colour.length / SoundLevels.COLOUR_PARTS;
      waves = waves.length > 0 && waves[0].length == bands ? waves : waves(bands);
      colours[j] = cepstra(colour, bands, waves);
    }
    return new SoundColours(colours);
  }

  /**
   * Nothing is known of the sounds.
   *
   * @param onsets how many there are
   */
  static SoundColours unknown(int onsets) {
    return new SoundColours(new double[onsets][0]);
  }

  /** How many numbers there are for each sound; 0 if nothing is known. */
  int size() {
    return ofOnset.length == 0 ? 0 : ofOnset[0].length;
  }

  /** The waves over the bands that the coefficients are of. */
  private static double[][] waves(int bands) {
    double[][] waves = new double[Math.min(COEFFICIENTS, bands - 1)][bands];
    for (int c = 0; c < waves.length; c++) {
      for (int band = 0; band < bands; band++) {
        waves[c][band] = StrictMath.cos(Math.PI * (c + 1) * (band + 0.5) / bands);
      }
    }
    return waves;
  }

  private static double[] cepstra(double[] colour, int bands, double[][] waves) {
    double[] cepstra = new double[waves.length * SoundLevels.COLOUR_PARTS];
    for (int part = 0; part < SoundLevels.COLOUR_PARTS; part++) {
      for (int c = 0; c < waves.length; c++) {
        double sum = 0;
        for (int band = 0; band < bands; band++) {
          sum += colour[part * bands + band] * waves[c][band];
        }
        cepstra[part * waves.length + c] = sum;
      }
    }
    return cepstra;
  }
}
