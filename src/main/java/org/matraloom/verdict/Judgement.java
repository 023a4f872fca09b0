package org.matraloom.verdict;

import java.util.Optional;
import org.matraloom.measure.Doubt;
import org.matraloom.measure.TakeFindings;
import org.matraloom.score.Performance;

/**
 * A take in three sentences.
 *
 * @param recorded where the recording begins or ends, if it does not hold the whole score
 * @param good what went well
 * @param wrong the one thing that went wrong and where, or that nothing did
 * @param practice what to practise next; empty if the take cannot be judged
 */
public record Judgement(
    Optional<String> recorded, String good, String wrong, Optional<PracticeAdvice> practice) {

  /**
   * Judges a take.
   *
   * @param findings what was measured
   * @param performance what was to be said
   * @return the judgement
   */
  public static Judgement of(TakeFindings findings, Performance performance) {
    int asked = findings.alignment().recorded().size();
    int heard = asked - findings.alignment().missed().size();
    if (findings.doubt().isPresent() || findings.pulse().isEmpty()) {
      String reason = findings.doubt().map(Doubt::reason).orElse("it has no pulse");
      String found =
          heard == 0
              ? "No sollu of the score was recognised."
              : heard + " of " + asked + " sollus seem to be there.";
      return new Judgement(
          Optional.empty(), found, "I cannot tell how it went: " + reason + ".", Optional.empty());
    }
    Optional<TakeFault> fault = Faults.worst(findings, performance);
    return new Judgement(
        StretchWords.of(findings, performance),
        StrongPoints.of(findings),
        fault.map(TakeFault::words).orElse("Nothing is out of its place enough to be heard."),
        Optional.of(
            fault
                .map(TakeFault::practice)
                .orElseGet(() -> PracticeAdvice.quicker(findings.pulse().get().beatsPerMinute()))));
  }
}
