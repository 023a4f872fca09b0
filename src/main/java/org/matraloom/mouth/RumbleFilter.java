package org.matraloom.mouth;

/**
 * Takes away what lies below a voice: a high-pass of two poles (Butterworth, by the bilinear
 * transform), forwards and backwards, so that nothing is moved in time.
 */
final class RumbleFilter {

  /** Under the lowest voices, which speak at 70 Hz and more. */
  private static final double CORNER_HZ = 55;

  private RumbleFilter() {}

  static float[] without(float[] sound) {
    return backwards(once(backwards(once(sound))));
  }

  private static float[] once(float[] x) {
    double k = StrictMath.tan(Math.PI * CORNER_HZ / Kit.RATE);
    double norm = 1 / (1 + Math.sqrt(2) * k + k * k);
    double a1 = 2 * (k * k - 1) * norm;
    double a2 = (1 - Math.sqrt(2) * k + k * k) * norm;
    float[] y = new float[x.length];
    double one = 0;
    double two = 0;
    for (int i = 0; i < x.length; i++) {
      double out = norm * x[i] + one;
      one = -2 * norm * x[i] - a1 * out + two;
      two = norm * x[i] - a2 * out;
      y[i] = (float) out;
    }
    return y;
  }

  private static float[] backwards(float[] x) {
    float[] y = new float[x.length];
    for (int i = 0; i < x.length; i++) {
      y[i] = x[x.length - 1 - i];
    }
    return y;
  }
}
