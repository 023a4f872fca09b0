package org.matraloom.voice;

/**
 * The spectrum of a burst or a hiss: resonances in parallel.
 *
 * @param hz where they lie
 * @param bandwidthHz how wide each is
 * @param gain gain at each
 */
record PhoneNoise(double[] hz, double[] bandwidthHz, double[] gain) {

  /** No noise. */
  static final PhoneNoise NONE = of();

  /** A spectrum from threes of frequency in Hz, width in Hz and level in dB. */
  static PhoneNoise of(double... peaks) {
    int count = peaks.length / 3;
    double[] hz = new double[count];
    double[] bandwidthHz = new double[count];
    double[] gain = new double[count];
    for (int i = 0; i < count; i++) {
      hz[i] = peaks[3 * i];
      bandwidthHz[i] = peaks[3 * i + 1];
      gain[i] = StrictMath.pow(10, peaks[3 * i + 2] / 20);
    }
    return new PhoneNoise(hz, bandwidthHz, gain);
  }

  /** The same spectrum from a mouth of another size. */
  PhoneNoise scaled(double size) {
    double[] moved = hz.clone();
    for (int i = 0; i < moved.length; i++) {
      moved[i] *= size;
    }
    return new PhoneNoise(moved, bandwidthHz, gain);
  }
}
