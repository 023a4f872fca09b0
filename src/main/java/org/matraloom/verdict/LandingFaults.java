package org.matraloom.verdict;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.measure.PulseBefore;
import org.matraloom.measure.SaidNadaiChange;
import org.matraloom.measure.TakeFindings;
import org.matraloom.measure.TakeLanding;
import org.matraloom.measure.Tolerance;
import org.matraloom.score.Nadai;
import org.matraloom.score.Performance;
import org.matraloom.time.MeasuredTempo;

/** Faults of a take that show at its landing, told by what caused them. */
final class LandingFaults {

  /** The speed after a change is the cause if it makes up so much of what the landing is off. */
  private static final double CAUSE_SHARE = 0.5;

  private final TakeFindings findings;
  private final Performance performance;
  private final TakePlaces places;
  private final double tempo;

  /**
   * Prepares to look for them.
   *
   * @param findings with a pulse
   * @param performance what was to be said
   * @param places names the places of the score
   * @param beatsPerMinute the tempo of the take
   */
  LandingFaults(
      TakeFindings findings, Performance performance, TakePlaces places, double beatsPerMinute) {
    this.findings = findings;
    this.performance = performance;
    this.places = places;
    this.tempo = beatsPerMinute;
  }

  /** The matras of the new nadai were too slow or too quick, and so it does not land. */
  Optional<TakeFault> lateByChange() {
    Optional<PulseBefore> before = findings.before();
    Optional<TakeLanding> off = off();
    if (before.isEmpty() || off.isEmpty()) {
      return Optional.empty();
    }
    int change = before.get().change();
    ExpectedSollu first = expected(change);
    double is = before.get().laterBeatSeconds();
    double asked = before.get().beatSeconds(findings.alignment().expected());
    double beats = expected(off.get().place()).beat().minus(first.beat()).toDouble();
    double caused = (is - asked) * beats;
    double error = off.get().errorSeconds();
    if (caused * error <= 0 || Math.abs(caused) < CAUSE_SHARE * Math.abs(error)) {
      return Optional.empty();
    }
    int from = expected(change - 1).matrasPerBeat();
    double ratio = first.matrasPerBeat() / (double) from;
    return Optional.of(
        new TakeFault(
            FaultKind.LATE_CHANGE,
            String.format(
                Locale.ROOT,
                "The %s was %.1f %% %s: %.2f times as fast as before instead of %.2f, from %s;"
                    + " you arrived %.2f s %s.",
                Nadai.inWords(first.matrasPerBeat()),
                100 * Math.abs(is / asked - 1),
                is > asked ? "slow" : "quick",
                ratio * asked / is,
                ratio,
                places.of(change),
                Math.abs(error),
                FaultTerms.side(error)),
            PracticeAdvice.change(
                performance,
                first.round(),
                from,
                first.matrasPerBeat(),
                MeasuredTempo.ofBeat(asked).beatsPerMinute())));
  }

  /** The pulse ran away or dragged all along, and so it does not land with the beat. */
  Optional<TakeFault> missedByDrift() {
    double drift = findings.pulse().orElseThrow().driftPercent();
    return Math.abs(drift) <= Tolerance.DRIFT_PERCENT
        ? Optional.empty()
        : off()
            .filter(landing -> drift * landing.errorSeconds() < 0)
            .map(
                landing ->
                    new TakeFault(
                        FaultKind.RUNAWAY,
                        String.format(
                            Locale.ROOT,
                            "%s; you arrived %.2f s %s.",
                            FaultTerms.driftWords(drift),
                            Math.abs(landing.errorSeconds()),
                            FaultTerms.side(landing.errorSeconds())),
                        PracticeAdvice.pulse(tempo)));
  }

  Optional<TakeFault> missed() {
    return off()
        .map(
            landing ->
                new TakeFault(
                    FaultKind.LANDING,
                    String.format(
                        Locale.ROOT,
                        "It does not land: the last sollu is %.0f ms %s (%.2f matras) by %s, %s.",
                        1_000 * Math.abs(landing.errorSeconds()),
                        FaultTerms.side(landing.errorSeconds()),
                        Math.abs(landing.errorMatras()),
                        landing.against().words(),
                        places.of(landing.place())),
                    PracticeAdvice.phrase(expected(landing.place()).phrase(), tempo)));
  }

  /** It may land, or be a little off; to which side is said where that is known. */
  Optional<TakeFault> unsure() {
    return findings
        .landing()
        .filter(landing -> !landing.lands() && !landing.isOff())
        .map(
            landing ->
                new TakeFault(
                    FaultKind.UNSURE_LANDING,
                    landing.isSided() ? sidedWords(landing) : unsureWords(landing),
                    PracticeAdvice.phrase(expected(landing.place()).phrase(), tempo)));
  }

  private String sidedWords(TakeLanding landing) {
    return String.format(
        Locale.ROOT,
        "It may not land: the last sollu is %.0f ms %s (%.2f matras) by %s, give or"
            + " take %.0f, %s.",
        1_000 * Math.abs(landing.errorSeconds()),
        FaultTerms.side(landing.errorSeconds()),
        Math.abs(landing.errorMatras()),
        landing.against().words(),
        1_000 * landing.giveOrTakeSeconds(),
        places.of(landing.place()));
  }

  private static String unsureWords(TakeLanding landing) {
    return String.format(
        Locale.ROOT,
        "The last sollu is %.0f ms %s by %s, give or take %.0f: I cannot tell whether it lands.",
        1_000 * Math.abs(landing.errorSeconds()),
        FaultTerms.side(landing.errorSeconds()),
        landing.against().words(),
        1_000 * landing.giveOrTakeSeconds());
  }

  /**
   * A change of nadai at a wrong speed that was made good before the end; where the tempo grows all
   * the while, that is the fault.
   */
  Optional<TakeFault> change() {
    if (findings.isDrift()) {
      return Optional.empty();
    }
    return findings.changes().stream()
        .filter(change -> FaultTerms.isOff(change, tempo))
        .findFirst()
        .map(this::told);
  }

  /**
   * A change of nadai at a speed that is hardly wrong, where the take as a whole seems to run or
   * drag the same way and a tempo that breaks there explains its times better than one that grows.
   */
  Optional<TakeFault> changeInPlaceOfDrift() {
    double drift = findings.pulse().orElseThrow().driftPercent();
    if (Math.abs(drift) <= Tolerance.DRIFT_PERCENT || !findings.breaksAtChange()) {
      return Optional.empty();
    }
    return findings.changes().stream()
        .filter(change -> (change.ratio() - change.asked()) * drift > 0)
        .max(Comparator.comparingDouble(change -> Math.abs(change.ratio() / change.asked() - 1)))
        .map(this::told);
  }

  private TakeFault told(SaidNadaiChange change) {
    return new TakeFault(
        FaultKind.CHANGE,
        String.format(
            Locale.ROOT,
            "At the change from %d to %d the matras went %.2f times as fast, not %.2f: %s.",
            change.from(),
            change.to(),
            change.ratio(),
            change.asked(),
            places.of(change.place())),
        PracticeAdvice.change(performance, change.round(), change.from(), change.to(), tempo));
  }

  private Optional<TakeLanding> off() {
    return findings.landing().filter(TakeLanding::isOff);
  }

  private ExpectedSollu expected(int place) {
    return findings.alignment().expected().get(place);
  }
}
