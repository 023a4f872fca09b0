package org.matraloom.verdict;

import java.util.Locale;
import org.matraloom.measure.SaidNadaiChange;
import org.matraloom.measure.Tolerance;
import org.matraloom.time.MeasuredTempo;

/** From where on something is worth a word, and the words that several faults share. */
final class FaultTerms {

  /** More than this share of sollus missing is worth a word. */
  private static final double MISSED_SHARE = 0.02;

  private FaultTerms() {}

  /** Whether the matras after a change go by at another speed than they should. */
  static boolean isOff(SaidNadaiChange change, double beatsPerMinute) {
    double matra = new MeasuredTempo(beatsPerMinute).beatSeconds() / change.to();
    double share = Tolerance.displacementSeconds(matra) / matra;
    return Math.abs(change.ratio() / change.asked() - 1) > share;
  }

  /** Whether so many are missing that it is worth a word. */
  static boolean areMissing(int missed, int asked) {
    return missed > MISSED_SHARE * asked;
  }

  /** Without a full stop. */
  static String driftWords(double driftPercent) {
    return String.format(
        Locale.ROOT,
        "The tempo %s by %.1f %% from the first beat to the last",
        driftPercent > 0 ? "ran away" : "dragged",
        Math.abs(driftPercent));
  }

  /** Which side of its place something is on. */
  static String side(double seconds) {
    return seconds > 0 ? "late" : "early";
  }
}
