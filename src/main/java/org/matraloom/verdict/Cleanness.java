package org.matraloom.verdict;

import java.util.List;
import org.matraloom.follow.SaidSollu;
import org.matraloom.measure.BreathFindings;
import org.matraloom.measure.RoundFindings;
import org.matraloom.measure.TakeFindings;
import org.matraloom.score.Performance;

/**
 * Whether a take is clean, as a whole and round by round.
 *
 * <p>The whole is clean if all of it was recorded and no fault was found: it reaches its end and
 * lands, shows no habit, no restart, no change of nadai at a wrong speed, next to no missing
 * sollus, no drift and no place of the beat that is always off. A round is clean if it was recorded
 * from its beginning to its end, next to none of its sollus are missing, it shows no habit, begins
 * at the right speed where the nadai changes, and, being the last, lands.
 */
public final class Cleanness {

  /** One sollu may be lost to a cough or to the microphone. */
  private static final int MISSED_IN_ROUND = 1;

  private final TakeFindings findings;
  private final Performance performance;

  /**
   * Looks at a take.
   *
   * @param findings what was measured
   * @param performance what was to be said
   */
  public Cleanness(TakeFindings findings, Performance performance) {
    this.findings = findings;
    this.performance = performance;
  }

  /**
   * Whether the whole take is clean.
   *
   * @return false also if it cannot be judged
   */
  public boolean ofWhole() {
    return findings.doubt().isEmpty()
        && findings.pulse().isPresent()
        && findings.alignment().recorded().size() == findings.alignment().expected().size()
        && Faults.worst(findings, performance).isEmpty();
  }

  /**
   * The rounds that were said at all.
   *
   * @return those with a tempo, in order; none if the take cannot be judged
   */
  public List<RoundFindings> rounds() {
    return findings.doubt().isPresent() || findings.pulse().isEmpty()
        ? List.of()
        : findings.rounds().stream().filter(round -> round.beatsPerMinute() > 0).toList();
  }

  /**
   * Whether a round is clean.
   *
   * @param round one of {@link #rounds()}
   * @return true if nothing in it was found wrong
   */
  public boolean of(RoundFindings round) {
    double tempo = findings.pulse().orElseThrow().beatsPerMinute();
    boolean isHeld = findings.habits().stream().noneMatch(habit -> habit.round() == round.round());
    boolean isRight =
        findings.changes().stream()
            .filter(change -> change.round() == round.round())
            .noneMatch(change -> FaultTerms.isOff(change, tempo));
    boolean isLast = round.round() == performance.rounds().size();
    boolean lands = !isLast || findings.lands();
    boolean isWhole =
        round.missed() <= MISSED_IN_ROUND || !FaultTerms.areMissing(round.missed(), round.sollus());
    return isHeld && isRight && lands && isWhole && round.unrecorded() == 0;
  }

  /**
   * How long the voice was in use.
   *
   * @return seconds from the first sollu to the last, pauses for breath taken off
   */
  public double voicedSeconds() {
    List<SaidSollu> sollus = findings.sollus();
    if (sollus.isEmpty()) {
      return 0;
    }
    double first = sollus.get(0).onsetSeconds();
    double last = sollus.get(sollus.size() - 1).onsetSeconds();
    double pauses =
        findings.breathing().taken().stream().mapToDouble(BreathFindings.Pause::seconds).sum();
    return Math.max(0, last - first - pauses);
  }
}
