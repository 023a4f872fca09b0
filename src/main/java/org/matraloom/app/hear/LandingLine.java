package org.matraloom.app.hear;

import org.matraloom.measure.TakeFindings;
import org.matraloom.measure.TakeLanding;

/** The line of a report that tells how a take lands. */
final class LandingLine {

  private LandingLine() {}

  /** The line, for a landing that was heard. */
  static String of(TakeFindings findings, TakeLanding found) {
    return "landing    "
        + SignedNumber.of(1_000 * found.errorSeconds(), 1)
        + " ms ("
        + SignedNumber.of(found.errorMatras(), 2)
        + " matras) by "
        + found.against().words()
        + ": "
        + verdict(findings, found);
  }

  /** A landing that may be that of another sollu is no landing yet. */
  private static String verdict(TakeFindings findings, TakeLanding found) {
    if (findings.knownLanding().isEmpty()) {
      return found.lands()
          ? "it lands if nothing is missing or left over"
          : "if nothing is missing or left over";
    }
    if (!found.lands()) {
      if (found.isOff()) {
        return "it does not land";
      }
      return found.isSided() ? "it may not land" : "I cannot tell whether it lands";
    }
    if (findings.isByDriftingPulse()) {
      return "it lands only as its own tempo changes";
    }
    if (findings.hasRestart()) {
      return "it lands from where you began again";
    }
    return findings.lands() ? "it lands" : "it lands if nothing is missing or left over";
  }
}
