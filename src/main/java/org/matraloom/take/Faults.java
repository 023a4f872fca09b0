package org.matraloom.take;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.matraloom.score.Nadai;
import org.matraloom.score.Performance;

/** Looks for what went wrong in a take, in the order of {@link FaultKind}. */
final class Faults {

  /**
   * A change of tempo below this is not noticed: five taps at 60 beats a minute are told from five
   * at 62.0, but hardly from less (experiments page of the Mazurka Project, mazurka.org.uk).
   */
  static final double DRIFT_PERCENT = 100 * 2.0 / 60;

  /**
   * In a performance a place of the beat may be off by twice what is noticed in a row of clicks.
   */
  private static final double UNEVEN_TOLERANCES = 2;

  private static final double SURE_SIGMAS = 3;

  /** More than this share of sollus missing is worth a word. */
  private static final double MISSED_SHARE = 0.02;

  private final TakeFindings findings;
  private final Performance performance;
  private final TakePlaces places;
  private final double tempo;
  private final MissingFaults missing;

  private Faults(TakeFindings findings, Performance performance) {
    this.findings = findings;
    this.performance = performance;
    this.places = new TakePlaces(performance, findings.alignment().expected());
    this.tempo = findings.pulse().orElseThrow().beatsPerMinute();
    this.missing = new MissingFaults(findings, places, tempo);
  }

  /**
   * The worst fault.
   *
   * @param findings with a pulse
   * @param performance what was to be said
   * @return nothing if all is well
   */
  static Optional<Fault> worst(TakeFindings findings, Performance performance) {
    return all(findings, performance).findFirst();
  }

  /**
   * The kinds of all faults.
   *
   * @param findings with a pulse
   * @param performance what was to be said
   * @return the worst first; empty if all is well
   */
  static List<FaultKind> kinds(TakeFindings findings, Performance performance) {
    return all(findings, performance).map(Fault::kind).toList();
  }

  private static Stream<Fault> all(TakeFindings findings, Performance performance) {
    Faults faults = new Faults(findings, performance);
    return Stream.<Supplier<Optional<Fault>>>of(
            faults.missing::end,
            faults::habit,
            faults::restart,
            faults::slip,
            faults::landing,
            faults::change,
            faults.missing::lateEntry,
            faults.missing::missed,
            faults::drift,
            faults::uneven,
            faults.missing::cutEnd)
        .map(Supplier::get)
        .flatMap(Optional::stream);
  }

  private Optional<Fault> habit() {
    return findings.habits().stream()
        .max(Comparator.comparingDouble(HabitFound::sure))
        .map(
            found -> {
              String nadai =
                  performance.rounds().stream()
                      .filter(round -> round.number() == found.round())
                      .map(round -> Nadai.inWords(round.matrasPerBeat()))
                      .findFirst()
                      .orElse("it");
              return new Fault(
                  FaultKind.HABIT,
                  "In round " + found.round() + ", " + nadai + ", " + found.habit().words() + ".",
                  Practice.change(performance, found.round(), 4, 5, tempo));
            });
  }

  private Optional<Fault> restart() {
    for (int i = 1; i < findings.sollus().size(); i++) {
      if (findings.alignment().isRestart(findings.sollus().get(i - 1), findings.sollus().get(i))) {
        int broke = findings.sollus().get(i - 1).place();
        return Optional.of(
            new Fault(
                FaultKind.RESTART,
                "You broke off after " + places.of(broke) + ", and began again.",
                Practice.phrase(expected(broke).phrase(), tempo)));
      }
    }
    return Optional.empty();
  }

  private Optional<Fault> slip() {
    PulseLine line = findings.pulse().orElseThrow().line();
    return Slip.of(findings.alignment(), findings.sollus(), line).stream()
        .max(Comparator.comparingDouble(slip -> Math.abs(slip.seconds())))
        .map(
            slip ->
                new Fault(
                    FaultKind.SLIP,
                    "From "
                        + places.of(slip.place())
                        + " on all is displaced: "
                        + slip.words()
                        + " before it.",
                    Practice.phrase(expected(Math.max(0, slip.place() - 1)).phrase(), tempo)));
  }

  private Optional<Fault> landing() {
    return findings
        .landing()
        .filter(landing -> !landing.lands())
        .map(
            landing ->
                new Fault(
                    FaultKind.LANDING,
                    String.format(
                        Locale.ROOT,
                        "It does not land: the last sollu is %.0f ms %s (%.2f matras), %s.",
                        1_000 * Math.abs(landing.errorSeconds()),
                        side(landing.errorSeconds()),
                        Math.abs(landing.errorMatras()),
                        places.of(landing.place())),
                    Practice.phrase(expected(landing.place()).phrase(), tempo)));
  }

  private Optional<Fault> change() {
    for (Quickening change : findings.changes()) {
      if (isOff(change, tempo)) {
        return Optional.of(
            new Fault(
                FaultKind.CHANGE,
                String.format(
                    Locale.ROOT,
                    "At the change from %d to %d the matras went %.2f times as fast, not %.2f: %s.",
                    change.from(),
                    change.to(),
                    change.ratio(),
                    change.asked(),
                    places.of(change.place())),
                Practice.change(performance, change.round(), change.from(), change.to(), tempo)));
      }
    }
    return Optional.empty();
  }

  /** Whether the matras after a change go by at another speed than they should. */
  static boolean isOff(Quickening change, double beatsPerMinute) {
    double matra = 60 / beatsPerMinute / change.to();
    double share = Tolerance.displacementSeconds(matra) / matra;
    return Math.abs(change.ratio() / change.asked() - 1) > share;
  }

  /** Whether so many are missing that it is worth a word. */
  static boolean areMissing(int missed, int asked) {
    return missed > MISSED_SHARE * asked;
  }

  private Optional<Fault> drift() {
    double drift = findings.pulse().orElseThrow().driftPercent();
    return Math.abs(drift) <= DRIFT_PERCENT
        ? Optional.empty()
        : Optional.of(
            new Fault(
                FaultKind.DRIFT,
                String.format(
                    Locale.ROOT,
                    "The tempo %s by %.1f %% from the first beat to the last.",
                    drift > 0 ? "ran away" : "dragged",
                    Math.abs(drift)),
                Practice.pulse(tempo)));
  }

  private Optional<Fault> uneven() {
    return findings.evenness().stream()
        .filter(this::isUneven)
        .max(Comparator.comparingDouble(place -> Math.abs(place.meanSeconds())))
        .map(
            place ->
                new Fault(
                    FaultKind.UNEVEN,
                    String.format(
                        Locale.ROOT,
                        "Matra %d of the beat in %s is %.0f ms %s as a rule.",
                        place.matra(),
                        Nadai.inWords(place.matrasPerBeat()),
                        1_000 * Math.abs(place.meanSeconds()),
                        side(place.meanSeconds())),
                    Practice.slowly(tempo)));
  }

  private boolean isUneven(Evenness place) {
    double matra = 60 / tempo / place.matrasPerBeat();
    double mean = Math.abs(place.meanSeconds());
    return mean > UNEVEN_TOLERANCES * Tolerance.displacementSeconds(matra)
        && mean > SURE_SIGMAS * place.spreadSeconds() / Math.sqrt(place.count());
  }

  private ExpectedSollu expected(int place) {
    return findings.alignment().expected().get(place);
  }

  private static String side(double seconds) {
    return seconds > 0 ? "late" : "early";
  }
}
