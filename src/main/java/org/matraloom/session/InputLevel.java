package org.matraloom.session;

import java.util.Locale;

/**
 * How loud an input is.
 *
 * @param nowDbfs the peak of the last moment, in dB below full scale
 * @param highestDbfs the highest peak so far
 */
record InputLevel(double nowDbfs, double highestDbfs) {

  private static final double TOO_LOUD_DBFS = -1;
  private static final double TOO_QUIET_DBFS = -40;
  private static final double NOTHING_DBFS = -85;
  private static final int BAR = 30;
  private static final double BAR_DB = 60;

  /** The level of a peak, in dB below full scale; no lower than -120. */
  static double dbfs(int peak, int fullScale) {
    return Math.max(-120, 20 * Math.log10(Math.max(peak, 1e-9) / fullScale));
  }

  /** A bar from -60 dB to full scale, and the figures. */
  String bar() {
    int filled = (int) Math.round(Math.max(0, 1 + nowDbfs / BAR_DB) * BAR);
    return String.format(
        Locale.ROOT,
        "[%s%s] %.0f dB, highest %.0f dB",
        "#".repeat(Math.min(BAR, filled)),
        ".".repeat(Math.max(0, BAR - filled)),
        nowDbfs,
        highestDbfs);
  }

  /** What to do about it. */
  String advice() {
    if (highestDbfs > TOO_LOUD_DBFS) {
      return "too loud: turn the input down, or what is loudest is cut off";
    } else if (highestDbfs < NOTHING_DBFS) {
      return "nothing is heard: is the microphone connected and switched on?";
    } else if (highestDbfs < TOO_QUIET_DBFS) {
      return "too quiet: come nearer to the microphone or turn the input up";
    }
    return "the level is good";
  }
}
