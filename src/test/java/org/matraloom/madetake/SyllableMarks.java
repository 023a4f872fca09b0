package org.matraloom.madetake;

/**
 * Where a syllable that stands alone begins, measured on its sound and on nothing else.
 *
 * @param releaseFrame the first frame at which the sound above the hum of the voice comes within 30
 *     dB of its peak and stays there: the release of a stop, the beginning of a murmur
 * @param vowelFrame the end of the first 8 ms from there on in which the mean of the band of the
 *     formants is within 12 dB of its loudest, and stays so: the vowel onset
 */
record SyllableMarks(int releaseFrame, int vowelFrame) {

  private static final double RELEASE_DB = 30;
  private static final double VOWEL_DB = 12;
  private static final int MEAN_STEPS = 8;
  private static final double VOWEL_LOWEST_HZ = 500;
  private static final double VOWEL_HIGHEST_HZ = 2_600;

  /** Measures a sound that begins out of silence. */
  static SyllableMarks of(float[] sound, int rate) {
    int step = rate / 1000;
    double[] sharp = new double[sound.length];
    for (int i = 1; i < sound.length; i++) {
      sharp[i] = sound[i] - sound[i - 1];
    }
    double[] released = energies(sharp, step);
    int release = first(released, 0, RELEASE_DB, 15, 3);
    double[] open = smoothed(energies(formantBand(sound, rate), step));
    int vowel = first(open, release, VOWEL_DB, 12, 12);
    return new SyllableMarks(release * step, (vowel + MEAN_STEPS - 1) * step);
  }

  private static double[] energies(double[] sound, int step) {
    double[] energies = new double[sound.length / step];
    for (int s = 0; s < energies.length; s++) {
      for (int i = s * step; i < (s + 1) * step; i++) {
        energies[s] += sound[i] * sound[i];
      }
    }
    return energies;
  }

  /** The mean over the 8 ms that begin there: about one period of a low voice. */
  private static double[] smoothed(double[] energies) {
    double[] means = new double[energies.length];
    for (int s = 0; s < means.length; s++) {
      int end = Math.min(means.length, s + MEAN_STEPS);
      for (int i = s; i < end; i++) {
        means[s] += energies[i] / (end - s);
      }
    }
    return means;
  }

  private static int first(double[] energies, int from, double belowDb, int window, int enough) {
    double most = 0;
    for (double energy : energies) {
      most = Math.max(most, energy);
    }
    double least = most * Math.pow(10, -belowDb / 10);
    for (int s = from; s + window < energies.length; s++) {
      int above = 0;
      for (int i = s; i < s + window; i++) {
        above += energies[i] > least ? 1 : 0;
      }
      if (energies[s] > least && above >= enough) {
        return s;
      }
    }
    return from;
  }

  private static double[] formantBand(float[] sound, int rate) {
    double low = 1 - Math.exp(-2 * Math.PI * VOWEL_HIGHEST_HZ / rate);
    double high = 1 - Math.exp(-2 * Math.PI * VOWEL_LOWEST_HZ / rate);
    double[] band = new double[sound.length];
    double[] state = new double[4];
    for (int i = 0; i < sound.length; i++) {
      state[0] += low * (sound[i] - state[0]);
      state[1] += low * (state[0] - state[1]);
      state[2] += high * (state[1] - state[2]);
      double once = state[1] - state[2];
      state[3] += high * (once - state[3]);
      band[i] = once - state[3];
    }
    return band;
  }
}
