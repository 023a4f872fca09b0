package org.matraloom.app;

import java.util.Locale;

/** Numbers with their sign; nothing rounded to zero has one. */
final class Signed {

  private Signed() {}

  /** The value with so many places after the point. */
  static String of(double value, int places) {
    String text = String.format(Locale.ROOT, "%+." + places + "f", value);
    return text.matches("[+-][0.]+") ? text.substring(1) : text;
  }
}
