package org.matraloom.verdict;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.measure.Evenness;
import org.matraloom.measure.HabitFound;
import org.matraloom.measure.MatraEvenness;
import org.matraloom.measure.TakeFindings;
import org.matraloom.measure.TimingJump;
import org.matraloom.measure.Tolerance;
import org.matraloom.pulse.PulseLine;
import org.matraloom.score.Nadai;
import org.matraloom.score.Performance;
import org.matraloom.time.MeasuredTempo;

/** Looks for what went wrong in a take, in the order of {@link FaultKind}. */
final class Faults {

  /**
   * In a performance a place of the beat may be off by twice what is noticed in a row of clicks.
   */
  private static final double UNEVEN_TOLERANCES = 3;

  private static final double SURE_SIGMAS = 4;

  private static final int ENOUGH_FOR_SPREAD = 12;

  private final TakeFindings findings;
  private final Performance performance;
  private final TakePlaces places;
  private final double tempo;
  private final MissingFaults missing;
  private final LandingFaults landing;

  private Faults(TakeFindings findings, Performance performance) {
    this.findings = findings;
    this.performance = performance;
    this.places = new TakePlaces(performance, findings.alignment().expected());
    this.tempo = findings.pulse().orElseThrow().beatsPerMinute();
    this.missing = new MissingFaults(findings, places, tempo);
    this.landing = new LandingFaults(findings, performance, places, tempo);
  }

  /**
   * The worst fault.
   *
   * @param findings with a pulse
   * @param performance what was to be said
   * @return nothing if all is well
   */
  static Optional<TakeFault> worst(TakeFindings findings, Performance performance) {
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
    return all(findings, performance).map(TakeFault::kind).toList();
  }

  private static Stream<TakeFault> all(TakeFindings findings, Performance performance) {
    Faults faults = new Faults(findings, performance);
    return Stream.<Supplier<Optional<TakeFault>>>of(
            faults.missing::end,
            faults.missing::unsure,
            faults::habit,
            faults::restart,
            faults.landing::lateByChange,
            faults::slip,
            faults.landing::missedByDrift,
            faults.landing::missed,
            faults.landing::change,
            faults.missing::lateEntry,
            faults.missing::missed,
            faults.missing::unlikeEnd,
            faults.landing::changeInPlaceOfDrift,
            faults::drift,
            faults.landing::unsure,
            faults::uneven,
            faults.missing::cutEnd)
        .map(Supplier::get)
        .flatMap(Optional::stream);
  }

  private Optional<TakeFault> habit() {
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
              return new TakeFault(
                  FaultKind.HABIT,
                  "In round " + found.round() + ", " + nadai + ", " + found.habit().words() + ".",
                  PracticeAdvice.change(performance, found.round(), 4, 5, tempo));
            });
  }

  private Optional<TakeFault> restart() {
    return findings.brokenOff().stream()
        .findFirst()
        .map(
            broke ->
                new TakeFault(
                    FaultKind.RESTART,
                    "You broke off after " + places.of(broke) + ", and began again.",
                    PracticeAdvice.phrase(expected(broke).phrase(), tempo)));
  }

  private Optional<TakeFault> slip() {
    PulseLine line = findings.pulse().orElseThrow().line();
    return TimingJump.of(findings.alignment(), findings.sollus(), line).stream()
        .max(Comparator.comparingDouble(slip -> Math.abs(slip.seconds())))
        .map(
            slip ->
                new TakeFault(
                    FaultKind.SLIP,
                    slip.waited()
                        ? String.format(
                            Locale.ROOT,
                            "You waited %.2f s before %s.",
                            slip.seconds(),
                            places.of(slip.place()))
                        : "From "
                            + places.of(slip.place())
                            + " on all is displaced: "
                            + slip.words()
                            + " before it.",
                    practiceAt(faultPlace(slip))));
  }

  /** Where a slip begins: at the first sollu left out, or at the one that came late. */
  private int faultPlace(TimingJump slip) {
    int place = slip.place();
    while (slip.seconds() < 0
        && place > 0
        && findings.sollus().stream().noneMatch(said -> said.place() == slip.place() - 1)
        && isMissed(place - 1)) {
      place--;
    }
    return place;
  }

  private boolean isMissed(int place) {
    return findings.alignment().missed().contains(place);
  }

  /** The change of nadai if it is there that the fault begins, or else the phrase. */
  private PracticeAdvice practiceAt(int place) {
    int from = place == 0 ? expected(0).matrasPerBeat() : expected(place - 1).matrasPerBeat();
    return from == expected(place).matrasPerBeat()
        ? PracticeAdvice.phrase(expected(place).phrase(), tempo)
        : PracticeAdvice.change(
            performance, expected(place).round(), from, expected(place).matrasPerBeat(), tempo);
  }

  private Optional<TakeFault> drift() {
    double drift = findings.pulse().orElseThrow().driftPercent();
    return Math.abs(drift) <= Tolerance.DRIFT_PERCENT
        ? Optional.empty()
        : Optional.of(
            new TakeFault(
                FaultKind.DRIFT, FaultTerms.driftWords(drift) + ".", PracticeAdvice.pulse(tempo)));
  }

  private Optional<TakeFault> uneven() {
    return MatraEvenness.of(
            findings.alignment().expected(),
            findings.sollus(),
            findings.pulse().orElseThrow().line())
        .stream()
        .filter(this::isUneven)
        .max(Comparator.comparingDouble(place -> Math.abs(place.meanSeconds())))
        .map(
            place ->
                new TakeFault(
                    FaultKind.UNEVEN,
                    String.format(
                        Locale.ROOT,
                        "Matra %d of the beat in %s is %.0f ms %s as a rule.",
                        place.matra(),
                        Nadai.inWords(place.matrasPerBeat()),
                        1_000 * Math.abs(place.meanSeconds()),
                        FaultTerms.side(place.meanSeconds())),
                    PracticeAdvice.slowly(tempo)));
  }

  private boolean isUneven(Evenness place) {
    double matra = new MeasuredTempo(tempo).beatSeconds() / place.matrasPerBeat();
    double mean = Math.abs(place.meanSeconds());
    return mean > UNEVEN_TOLERANCES * Tolerance.displacementSeconds(matra)
        && mean > SURE_SIGMAS * spread(place) / Math.sqrt(place.count());
  }

  /** The spread at a place of the beat; of few sollus that may look small by chance. */
  private double spread(Evenness place) {
    return place.count() < ENOUGH_FOR_SPREAD
        ? Math.max(place.spreadSeconds(), findings.pulse().orElseThrow().spreadSeconds())
        : place.spreadSeconds();
  }

  private ExpectedSollu expected(int place) {
    return findings.alignment().expected().get(place);
  }
}
