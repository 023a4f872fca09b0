package org.matraloom.app.hear;

import java.util.Locale;

/** Numbers with their sign; nothing rounded to zero has one. */
final class SignedNumber {

  private SignedNumber() {}

  /**
   * The value with so many places after the point.
   *
   * @param value the number
   * @param places how many digits follow the point, 0 or more
   * @return the number with its sign; zero has none
   */
  static String of(double value, int places) {
    String text = String.format(Locale.ROOT, "%+." + places + "f", value);
    return text.matches("[+-][0.]+") ? text.substring(1) : text;
  }
}
