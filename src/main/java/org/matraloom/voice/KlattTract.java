package org.matraloom.voice;

/**
 * The vocal tract: nose and formants in cascade for voice and breath, and resonances in parallel
 * for noise made in the mouth.
 *
 * <p>Cascade and parallel branch after Klatt 1980, fig. 6. Formants that never move go on up to 14
 * kHz, in place of the correction that a row of few resonators needs for those it lacks.
 */
final class KlattTract {

  private static final double NOSE_WIDTH_HZ = 100;
  private static final double MOUTH_WIDTH_HZ = 120;
  private static final double FOURTH_WIDTH_HZ = 140;
  private static final double FIFTH_WIDTH_HZ = 150;
  private static final double WIDER_BY_HZ = 20;
  private static final double HIGHEST_SHARE_OF_RATE = 0.45;

  private final KlattResonator nosePole;
  private final KlattResonator noseZero;
  private final KlattResonator mouthPole;
  private final KlattResonator mouthZero;
  private final KlattResonator[] lower = new KlattResonator[3];
  private final KlattResonator[] upper;
  private final KlattBand[] parallel;

  /** Builds a tract at rest, for a person and the noise of one consonant. */
  KlattTract(int ratePerSecond, VoicePerson person, PhoneNoise noise) {
    nosePole = new KlattResonator(ratePerSecond);
    noseZero = new KlattResonator(ratePerSecond);
    mouthPole = new KlattResonator(ratePerSecond);
    mouthZero = new KlattResonator(ratePerSecond);
    nosePole.tune(KlattParameter.NOSE_HZ, NOSE_WIDTH_HZ);
    mouthPole.tune(KlattParameter.MOUTH_HZ, MOUTH_WIDTH_HZ);
    for (int i = 0; i < lower.length; i++) {
      lower[i] = new KlattResonator(ratePerSecond);
    }
    double[] upperHz = person.upperHz();
    int count = 1;
    while (count <= upperHz.length && upperHz[count - 1] < HIGHEST_SHARE_OF_RATE * ratePerSecond) {
      count++;
    }
    upper = new KlattResonator[count];
    upper[0] = new KlattResonator(ratePerSecond);
    upper[0].tune(person.fourthHz(), FOURTH_WIDTH_HZ);
    for (int i = 1; i < count; i++) {
      upper[i] = new KlattResonator(ratePerSecond);
      upper[i].tune(upperHz[i - 1], FIFTH_WIDTH_HZ + WIDER_BY_HZ * (i - 1));
    }
    parallel = new KlattBand[noise.hz().length];
    for (int i = 0; i < parallel.length; i++) {
      parallel[i] =
          new KlattBand(ratePerSecond, noise.hz()[i], noise.bandwidthHz()[i], noise.gain()[i]);
    }
  }

  /** Takes the shape of the moment that a score has reached. */
  void shape(KlattScore score) {
    noseZero.tune(score.value(KlattParameter.NOSE_ZERO), NOSE_WIDTH_HZ);
    mouthZero.tune(score.value(KlattParameter.MOUTH_ZERO), MOUTH_WIDTH_HZ);
    lower[0].tune(score.value(KlattParameter.F1), score.value(KlattParameter.B1));
    lower[1].tune(score.value(KlattParameter.F2), score.value(KlattParameter.B2));
    lower[2].tune(score.value(KlattParameter.F3), score.value(KlattParameter.B3));
  }

  /**
   * Sends a block through.
   *
   * @param folds what comes from the folds, replaced by what is heard
   * @param mouth noise made in the mouth
   * @param frames how many
   */
  void pass(double[] folds, double[] mouth, int frames) {
    noseZero.cancel(folds, frames);
    nosePole.resonate(folds, frames);
    mouthZero.cancel(folds, frames);
    mouthPole.resonate(folds, frames);
    for (KlattResonator formant : lower) {
      formant.resonate(folds, frames);
    }
    for (KlattResonator formant : upper) {
      formant.resonate(folds, frames);
    }
    for (KlattBand band : parallel) {
      band.add(mouth, frames, folds);
    }
  }
}
