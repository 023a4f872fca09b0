package org.matraloom.verdict;

import java.util.Comparator;
import java.util.Locale;
import org.matraloom.follow.RecordedRange;
import org.matraloom.measure.Pulse;
import org.matraloom.measure.RoundFindings;
import org.matraloom.measure.TakeFindings;
import org.matraloom.measure.Tolerance;

/** Says what went well in a take. */
final class StrongPoints {

  private StrongPoints() {}

  /**
   * One sentence: the pulse if it held, or else the words, or else the steadiest round.
   *
   * @param findings with a pulse
   * @return the sentence
   */
  static String of(TakeFindings findings) {
    Pulse pulse = findings.pulse().orElseThrow();
    RecordedRange recorded = findings.alignment().recorded();
    int asked = recorded.size();
    boolean isWhole = asked == findings.alignment().expected().size();
    String all = "all " + asked + (isWhole ? " sollus were said" : " sollus of it were said");
    int missed = findings.alignment().missed().size();
    String words = missed == 0 ? all : asked - missed + " of " + asked + " sollus were heard";
    if (Math.abs(pulse.driftPercent()) <= Tolerance.DRIFT_PERCENT && findings.habits().isEmpty()) {
      return String.format(
          Locale.ROOT,
          "The pulse held at %.1f beats a minute, and %s.",
          pulse.beatsPerMinute(),
          words);
    }
    if (missed == 0) {
      return "A" + all.substring(1) + ".";
    }
    return findings.rounds().stream()
        .filter(round -> round.beatsPerMinute() > 0)
        .min(Comparator.comparingDouble(RoundFindings::spreadSeconds))
        .map(
            round ->
                String.format(
                    Locale.ROOT,
                    "Round %d was the steadiest: its sollus lie %.0f ms from the pulse.",
                    round.round(),
                    1_000 * round.spreadSeconds()))
        .orElse("At least " + words + ".");
  }
}
