package org.matraloom.voice;

import java.util.Arrays;

/**
 * Who speaks: two voices that differ in their folds and in the size of their tract.
 *
 * <p>Vowel targets of the lower voice, F1 and F2: the means of men for the five vowels of Greek, in
 * M. Fourakis, A. Botinis and M. Katsaiti, Acoustic characteristics of Greek vowels, Phonetica 56
 * (1999) 28-43, taken because that language, like the sollus, has just a, i, u, e, o. F3: men in G.
 * E. Peterson and H. L. Barney, J. Acoust. Soc. Am. 24 (1952) 175-184, table II, for their nearest
 * vowels. The higher voice is the lower one times 1.17, 1.18 and 1.14, the female to male ratios of
 * F1, F2 and F3 (R. D. Kent and H. K. Vorperian, J. Commun. Disord. 74 (2018) 74-97); the formants
 * move, the sound is not resampled.
 */
public enum VoicePerson {
  /** A lower voice. */
  LOW(118, 0.55, 4, 1, 1, 1),
  /** A higher voice. */
  HIGH(208, 0.60, 4, 1.17, 1.18, 1.14);

  private static final double[][] LOWER_HZ = {
    {738, 1350, 2440}, {340, 2046, 3010}, {349, 996, 2240}, {491, 1788, 2480}, {508, 1020, 2410}
  };

  private static final double FOURTH_HZ = 3500;
  private static final double SPACING_HZ = 1000;
  private static final double HIGHEST_HZ = 14_000;

  private final double pitchHz;
  private final double openness;
  private final double tiltDb;
  private final double ratio1;
  private final double ratio2;
  private final double ratio3;

  VoicePerson(
      double pitchHz, double openness, double tiltDb, double ratio1, double ratio2, double ratio3) {
    this.pitchHz = pitchHz;
    this.openness = openness;
    this.tiltDb = tiltDb;
    this.ratio1 = ratio1;
    this.ratio2 = ratio2;
    this.ratio3 = ratio3;
  }

  /** The middle pitch, Hz. */
  double pitchHz() {
    return pitchHz;
  }

  /** How much of a period the folds are open, 0 to 1. */
  double openness() {
    return openness;
  }

  /** How far the voice is damped at 3 kHz, dB. */
  double tiltDb() {
    return tiltDb;
  }

  /** Size of F1 against the lower voice. */
  double ratio1() {
    return ratio1;
  }

  /** Size of F2 against the lower voice. */
  double ratio2() {
    return ratio2;
  }

  /** Size of F3, and of all above, against the lower voice. */
  double ratio3() {
    return ratio3;
  }

  /** The fourth formant, Hz. */
  double fourthHz() {
    return FOURTH_HZ * ratio3;
  }

  /**
   * The formants above the fourth, which never move: one each 1000 Hz in a tract of 17.5 cm (G.
   * Fant, Acoustic Theory of Speech Production, 1960).
   */
  double[] upperHz() {
    int count = (int) ((HIGHEST_HZ - fourthHz()) / (SPACING_HZ * ratio3));
    double[] hz = new double[count];
    Arrays.setAll(hz, i -> fourthHz() + (i + 1) * SPACING_HZ * ratio3);
    return hz;
  }

  /** The steady formants of a vowel. */
  PhoneFormants target(PhoneVowel vowel) {
    double[] hz = LOWER_HZ[vowel.ordinal()];
    return scaled(hz[0], hz[1], hz[2]);
  }

  /** Formants of the lower voice in the size of this one. */
  PhoneFormants scaled(double f1, double f2, double f3) {
    return new PhoneFormants(f1 * ratio1, f2 * ratio2, f3 * ratio3);
  }
}
