package org.matraloom.onset;

/**
 * A triangular weighting of spectrum lines.
 *
 * @param first the first line with a weight
 * @param weights of the lines from there on, sum 1
 */
record MelBand(int first, float[] weights) {

  /** A triangle from {@code low} over its top at {@code middle} to {@code high}, all in hertz. */
  static MelBand of(double low, double middle, double high, double lineHz, int size) {
    int from = Math.min(size / 2 - 1, (int) Math.ceil(low / lineHz));
    int to = Math.min(size / 2 - 1, (int) Math.floor(high / lineHz));
    float[] weights = new float[Math.max(1, to - from + 1)];
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      double hertz = (from + i) * lineHz;
      double weight =
          Math.max(0, Math.min((hertz - low) / (middle - low), (high - hertz) / (high - middle)));
      weights[i] = (float) weight;
      sum += weight;
    }
    if (sum < 0.5) {
      return new MelBand((int) Math.round(middle / lineHz), new float[] {1});
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= (float) sum;
    }
    return new MelBand(from, weights);
  }

  /** The weighted mean of the lines' energies, from a transform of real numbers, packed. */
  float energy(float[] spectrum) {
    float sum = 0;
    for (int i = 0; i < weights.length; i++) {
      int line = first + i;
      float real = spectrum[2 * line];
      float imaginary = line == 0 ? 0 : spectrum[2 * line + 1];
      sum += weights[i] * (real * real + imaginary * imaginary);
    }
    return sum;
  }
}
