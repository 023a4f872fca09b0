package org.matraloom.log;

/**
 * How likely a mean is to be so far from zero by chance (Student, Biometrika 6 (1908) 1-25).
 *
 * <p>The closed form for whole degrees of freedom: M. Abramowitz and I. A. Stegun, Handbook of
 * Mathematical Functions (1964), 26.7.3 and 26.7.4.
 */
final class StudentT {

  private StudentT() {}

  /**
   * The chance of a value at least so far from zero, on either side.
   *
   * @param t the mean by its standard error
   * @param degrees degrees of freedom, 1 or more
   * @return 0 to 1, to about 1e-15
   */
  static double chance(double t, int degrees) {
    double angle = Math.atan(Math.abs(t) / Math.sqrt(degrees));
    double cosine = Math.cos(angle);
    boolean isOdd = degrees % 2 == 1;
    double term = isOdd ? cosine : 1;
    double sum = 0;
    for (int k = isOdd ? 3 : 2; k <= degrees; k += 2) {
      sum += term;
      term *= cosine * cosine * (k - 1) / k;
    }
    double within = isOdd ? 2 / Math.PI * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
    return Math.max(0, 1 - within);
  }
}
