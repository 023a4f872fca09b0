package org.matraloom.verdict;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.matraloom.follow.EndAmbiguity;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.measure.TakeFindings;

/** Faults of a take in which something of the score is not there. */
final class MissingFaults {

  private final TakeFindings findings;
  private final TakePlaces places;
  private final double tempo;

  /**
   * Prepares to look for them.
   *
   * @param findings with a pulse
   * @param places names the places of the score
   * @param beatsPerMinute the tempo of the take
   */
  MissingFaults(TakeFindings findings, TakePlaces places, double beatsPerMinute) {
    this.findings = findings;
    this.places = places;
    this.tempo = beatsPerMinute;
  }

  Optional<TakeFault> end() {
    int last = findings.sollus().stream().mapToInt(SaidSollu::place).max().orElse(0);
    boolean isCut = findings.alignment().recorded().to() < findings.alignment().expected().size();
    if (findings.landing().isPresent() || isCut || isEitherEnd()) {
      return Optional.empty();
    }
    return Optional.of(
        new TakeFault(
            FaultKind.END,
            "The landing was not heard: the take ends with " + places.of(last) + ".",
            PracticeAdvice.phrase(expected(last).phrase(), tempo)));
  }

  /** Whether it may as well be the first sollu that is missing. */
  private boolean isEitherEnd() {
    return findings
        .alignment()
        .unsure()
        .map(EndAmbiguity::at)
        .filter(at -> at == EndAmbiguity.End.EITHER || at == EndAmbiguity.End.EITHER_SOME)
        .isPresent();
  }

  /** Something is missing or left over, and it cannot be told where. */
  Optional<TakeFault> unsure() {
    return unsure(false, FaultKind.UNSURE);
  }

  /** The last sound is like none of the sollus. */
  Optional<TakeFault> unlikeEnd() {
    return unsure(true, FaultKind.UNLIKE_END);
  }

  private Optional<TakeFault> unsure(boolean unlike, FaultKind kind) {
    return findings
        .alignment()
        .unsure()
        .filter(unsure -> unsure.at() == EndAmbiguity.End.UNLIKE == unlike)
        .map(unsure -> new TakeFault(kind, unsure.words(), PracticeAdvice.slowly(tempo)));
  }

  /** There was time for all, but the first were not heard. */
  Optional<TakeFault> lateEntry() {
    int first = findings.sollus().stream().mapToInt(SaidSollu::place).min().orElse(0);
    int late = first - findings.alignment().recorded().from();
    boolean isUnsaid = findings.alignment().unsaid().contains(first - 1);
    if (late == 0
        || !isUnsaid && !FaultTerms.areMissing(late, findings.alignment().recorded().size())) {
      return Optional.empty();
    }
    return Optional.of(
        new TakeFault(
            FaultKind.LATE_ENTRY,
            (late == 1 ? "The first sollu was" : "The first " + late + " sollus were")
                + " not heard, though the recording was on: you came in at "
                + places.of(first)
                + ", or began there.",
            PracticeAdvice.phrase(expected(first - late).phrase(), tempo)));
  }

  /** Sollus that were left out while the beat went on; what sounds has only no beginning. */
  Optional<TakeFault> missed() {
    List<Integer> missed = findings.alignment().unsaid().stream().sorted().toList();
    Map<String, List<Integer>> byPhrase =
        missed.stream().collect(Collectors.groupingBy(k -> expected(k).phrase()));
    return byPhrase.entrySet().stream()
        .max(
            Comparator.comparingInt((Map.Entry<String, List<Integer>> e) -> e.getValue().size())
                .thenComparing(Map.Entry::getKey))
        .map(
            worst ->
                new TakeFault(
                    FaultKind.MISSED,
                    missedWords(missed.size(), worst.getValue(), worst.getKey()),
                    PracticeAdvice.phrase(worst.getKey(), tempo)));
  }

  private String missedWords(int all, List<Integer> worst, String phrase) {
    String first = places.of(worst.get(0));
    if (all == 1) {
      return "1 sollu was not heard: " + first + ".";
    }
    String share = worst.size() == all ? "all" : worst.size() + " of them";
    return all
        + " sollus were not heard, "
        + share
        + " in "
        + phrase
        + "; the first there is "
        + first
        + ".";
  }

  /** No fault of the performer's, so it is told only if there is no other. */
  Optional<TakeFault> cutEnd() {
    int to = findings.alignment().recorded().to();
    return to == findings.alignment().expected().size()
        ? Optional.empty()
        : Optional.of(
            new TakeFault(
                FaultKind.CUT_END,
                "The landing was not heard: it is not in the recording.",
                PracticeAdvice.phrase(expected(to).phrase(), tempo)));
  }

  private ExpectedSollu expected(int place) {
    return findings.alignment().expected().get(place);
  }
}
