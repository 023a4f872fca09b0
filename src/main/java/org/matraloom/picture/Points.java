package org.matraloom.picture;

/** Lengths on paper as text. */
public final class Points {

  private static final int HUNDREDTHS = 100;

  private Points() {}

  /**
   * A length to a hundredth of a point, with no more digits than it needs.
   *
   * @param points the length, in points
   * @return a decimal number
   */
  public static String text(double points) {
    long hundredths = Math.round(points * HUNDREDTHS);
    long whole = Math.abs(hundredths) / HUNDREDTHS;
    long rest = Math.abs(hundredths) % HUNDREDTHS;
    StringBuilder text = new StringBuilder(hundredths < 0 ? "-" : "");
    text.append(whole);
    if (rest != 0) {
      text.append('.').append(rest / 10);
      if (rest % 10 != 0) {
        text.append(rest % 10);
      }
    }
    return text.toString();
  }
}
