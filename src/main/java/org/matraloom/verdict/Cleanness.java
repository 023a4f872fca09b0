package org.matraloom.verdict;

import java.util.List;
import java.util.stream.Stream;
import org.matraloom.follow.SaidSollu;
import org.matraloom.measure.BreathFindings;
import org.matraloom.measure.RoundFindings;
import org.matraloom.measure.TakeFindings;
import org.matraloom.measure.TakeLanding;
import org.matraloom.measure.TimingJump;
import org.matraloom.score.Performance;

/**
 * Whether a take is clean, as a whole and round by round.
 *
 * <p>The whole is clean if all of it was recorded and no fault was found: it reaches its end and
 * lands, shows no habit, no restart, no change of nadai at a wrong speed, next to no missing
 * sollus, no drift and no place of the beat that is always off. A round is clean if it was recorded
 * from its beginning to its end, next to none of its sollus are missing, it shows no habit, no wait
 * or slip and no new beginning, begins at the right speed where the nadai changes, and, being the
 * last, lands. What an earlier round came late or early by is that round's, not the last one's.
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
    boolean lands = !isLast || findings.landsAsBegun() || landsByItself(round.round());
    boolean isWhole =
        round.missed() <= MISSED_IN_ROUND || !FaultTerms.areMissing(round.missed(), round.sollus());
    boolean goesOn =
        !isBroken(round.round()) && slips().noneMatch(slip -> roundOf(slip) == round.round());
    return isHeld && isRight && lands && isWhole && goesOn && round.unrecorded() == 0;
  }

  /** Whether the last round lands where it would, had nothing before it been late or early. */
  private boolean landsByItself(int last) {
    double carried =
        slips().filter(slip -> roundOf(slip) < last).mapToDouble(TimingJump::seconds).sum();
    return carried != 0
        && findings.knownLanding().filter(landing -> landsBut(landing, carried)).isPresent();
  }

  private static boolean landsBut(TakeLanding landing, double carriedSeconds) {
    return Math.abs(landing.errorSeconds() - carriedSeconds) + landing.giveOrTakeSeconds()
        <= landing.mostSeconds();
  }

  private Stream<TimingJump> slips() {
    return TimingJump.of(
        findings.alignment(), findings.sollus(), findings.pulse().orElseThrow().line())
        .stream();
  }

  private int roundOf(TimingJump slip) {
    return findings.alignment().expected().get(slip.place()).round();
  }

  /** Whether one broke off in a round and began again. */
  private boolean isBroken(int round) {
    return findings.brokenOff().stream()
        .anyMatch(place -> findings.alignment().expected().get(place).round() == round);
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
