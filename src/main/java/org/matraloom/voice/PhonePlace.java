package org.matraloom.voice;

/**
 * Where a consonant is made, and where the formants of the vowel beside it point to from there.
 *
 * <p>F2 at the closure is a locus equation, {@code slope * F2 of the vowel + intercept} (form: H.
 * M. Sussman, H. A. McCaffrey and S. A. Matthews, J. Acoust. Soc. Am. 90 (1991) 1309-1325). The
 * figures are our own, chosen near the published F2 loci of b 720, d 1800 and g 3000 Hz before
 * front vowels (P. C. Delattre, A. M. Liberman and F. S. Cooper, J. Acoust. Soc. Am. 27 (1955)
 * 769-773) and near the tracks for ta, ka, ki, ko, na, ni, nu and mi in the parameter files of the
 * public program klatt80. A retroflex differs from a dental most by its low F3.
 */
public enum PhonePlace {
  /** The lips. */
  LABIAL(0.60, 380, 0.7, 560),
  /** Tongue tip at the teeth. */
  DENTAL(0.32, 1220, 0.6, 980),
  /** Tongue tip curled back. */
  RETROFLEX(0.32, 1300, 0.4, 1120),
  /** Tongue blade at the hard palate. */
  PALATAL(0.40, 1180, 0.5, 1380),
  /** Back of the tongue at the soft palate. */
  VELAR(0.78, 700, 0.6, 960);

  private static final double CLOSED_F1_HZ = 220;
  private static final double ROUNDED_VELAR_RISE_HZ = 80;
  private static final double PINCH_LEAST_HZ = 450;
  private static final double PINCH_MOST_HZ = 700;

  private final double slope2;
  private final double intercept2;
  private final double slope3;
  private final double intercept3;

  PhonePlace(double slope2, double intercept2, double slope3, double intercept3) {
    this.slope2 = slope2;
    this.intercept2 = intercept2;
    this.slope3 = slope3;
    this.intercept3 = intercept3;
  }

  /**
   * Where the formants are at the moment of opening into a vowel, or of closing after one; the
   * first is that of a closed mouth.
   */
  PhoneFormants beside(VoicePerson person, PhoneVowel vowel) {
    PhoneFormants open = person.target(vowel);
    double f2 = slope2 * open.f2() + intercept2 * person.ratio2();
    double f3 = slope3 * open.f3() + intercept3 * person.ratio3();
    if (this == VELAR) {
      f2 = vowel.isRounded() ? open.f2() + ROUNDED_VELAR_RISE_HZ * person.ratio2() : f2;
      f3 = Math.max(f2 + PINCH_LEAST_HZ, Math.min(f3, f2 + PINCH_MOST_HZ));
    }
    return new PhoneFormants(CLOSED_F1_HZ * person.ratio1(), f2, f3);
  }
}
