package org.matraloom.follow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.matraloom.onset.BandEnergies;
import org.matraloom.onset.KnownSounds;
import org.matraloom.onset.Onset;
import org.matraloom.onset.SoundLevels;
import org.matraloom.phonetics.AnyMouth;
import org.matraloom.score.Lexicon;
import org.matraloom.score.SolluSound;

/**
 * How each sound of a take sounds, in few numbers: the burst and the vowel after it, each by the
 * lower cepstral coefficients of its mel bands (S. B. Davis and P. Mermelstein, IEEE Trans. Acoust.
 * Speech Signal Process. 28 (1980) 357-366), which hardly depend on one another.
 *
 * @param ofOnset the numbers for each onset; all empty if nothing is known of the sound
 * @param ofKind what is known beforehand of each kind of sollu, in the same numbers, apart from
 *     what microphone and room add to all; empty rows for those that are not known, no row if none
 *     is
 * @param kinds the kinds of the places of the score that this and the next hold for
 * @param anyMouth what is known of how these kinds sound in any mouth
 */
record SoundColours(double[][] ofOnset, double[][] ofKind, int[] kinds, AnyMouth anyMouth) {

  /** The first coefficient is the level, which is left out; what lies above these is noise. */
  private static final int COEFFICIENTS = 9;

  private static final double[] NOTHING = {};

  /**
   * Colours of which nothing is known beforehand.
   *
   * @param ofOnset as above
   */
  SoundColours(double[][] ofOnset) {
    this(ofOnset, new double[0][], new int[0]);
  }

  /**
   * Colours of sounds in a mouth that is known, or in one that is not.
   *
   * @param ofOnset as above
   * @param ofKind as above
   * @param kinds as above
   */
  SoundColours(double[][] ofOnset, double[][] ofKind, int[] kinds) {
    this(ofOnset, ofKind, kinds, AnyMouth.UNKNOWN);
  }

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
   * The colours of all onsets, and what the letters of the score say of them; nothing if the
   * recording has not all bands.
   *
   * @param levels the recording
   * @param onsets in order of time
   * @param asked the sollus of the score
   * @param lexicon how they are said
   */
  static SoundColours of(
      SoundLevels levels, List<Onset> onsets, List<ExpectedSollu> asked, Lexicon lexicon) {
    SoundColours heard = of(levels, onsets);
    return levels.energies().usedBands() < BandEnergies.BANDS
        ? heard
        : heard.withLetters(asked, lexicon);
  }

  /**
   * The same colours with what the letters of a score say of them.
   *
   * @param asked the sollus of the score
   * @param lexicon how they are said
   */
  SoundColours withLetters(List<ExpectedSollu> asked, Lexicon lexicon) {
    int[] kindOf = ExpectedSollu.kinds(asked);
    List<Optional<SolluSound>> sounds = new ArrayList<>();
    for (int k = 0; k < kindOf.length; k++) {
      if (kindOf[k] == sounds.size()) {
        sounds.add(lexicon.sound(asked.get(k).sollu()));
      }
    }
    return new SoundColours(ofOnset, new double[0][], kindOf, AnyMouth.of(sounds, ofOnset));
  }

  /**
   * The colours of all onsets beside those that are known beforehand.
   *
   * @param levels the recording
   * @param onsets in order of time
   * @param asked the sollus of the score
   * @param mouth what is known
   */
  static SoundColours of(
      SoundLevels levels, List<Onset> onsets, List<ExpectedSollu> asked, KnownSounds mouth) {
    SoundColours heard = of(levels, onsets);
    if (mouth.isUnknown() || onsets.isEmpty()) {
      return heard;
    }
    int[] kinds = ExpectedSollu.kinds(asked);
    int numbers = levels.colour(onsets.get(0).seconds()).length;
    int bands = numbers / SoundLevels.COLOUR_PARTS;
    double[][] waves = waves(bands);
    double[][] known = new double[Arrays.stream(kinds).max().orElse(0) + 1][0];
    for (int k = 0; k < kinds.length; k++) {
      double[] colour = mouth.colour(asked.get(k).sollu().sound(), numbers);
      known[kinds[k]] = colour.length == 0 ? colour : cepstra(colour, bands, waves);
    }
    return new SoundColours(heard.ofOnset, known, kinds);
  }

  /**
   * Where the colours of the sollus are to be expected by what is known beforehand: moved so that
   * those that were heard have the mean of what was heard.
   *
   * @param ofPlaces the kinds of the places of the score
   * @param counts how many sounds were put to each kind
   * @param mean the mean of all these sounds
   * @return a row for each kind; an empty one if nothing is known of it, or other kinds are meant
   */
  double[][] knownAbout(int[] ofPlaces, int[] counts, double[] mean) {
    double[][] known = new double[counts.length][];
    Arrays.fill(known, NOTHING);
    if (ofKind.length == 0 || !Arrays.equals(kinds, ofPlaces)) {
      return known;
    }
    int heard = 0;
    double[] sum = new double[mean.length];
    for (int kind = 0; kind < ofKind.length; kind++) {
      heard += ofKind[kind].length > 0 ? counts[kind] : 0;
      for (int d = 0; d < ofKind[kind].length; d++) {
        sum[d] += counts[kind] * ofKind[kind][d];
      }
    }
    for (int kind = 0; heard > 0 && kind < ofKind.length; kind++) {
      known[kind] = ofKind[kind].clone();
      for (int d = 0; d < known[kind].length; d++) {
        known[kind][d] += mean[d] - sum[d] / heard;
      }
    }
    return known;
  }

  /**
   * Nothing is known of the sounds.
   *
   * @param onsets how many there are
   */
  static SoundColours unknown(int onsets) {
    return new SoundColours(new double[onsets][0]);
  }

  /**
   * How much likelier the sounds of a pairing are if they are said as the letters say.
   *
   * @param ofPlaces the kinds of the places of the score
   * @param said the pairing
   * @return a logarithm, at least 0; 0 if other kinds are meant, or nothing is known
   */
  double asLettersSay(int[] ofPlaces, List<Alignment.Said> said) {
    return Arrays.equals(kinds, ofPlaces)
        ? anyMouth.evidence(
            said.stream().mapToInt(each -> kinds[each.sollu()]).toArray(),
            said.stream().mapToInt(Alignment.Said::onset).toArray())
        : 0;
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
