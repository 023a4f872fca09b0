package org.matraloom.take;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

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

  Optional<Fault> end() {
    int last = findings.sollus().stream().mapToInt(SaidSollu::place).max().orElse(0);
    boolean isCut = findings.alignment().recorded().to() < findings.alignment().expected().size();
    if (findings.landing().isPresent() || isCut) {
      return Optional.empty();
    }
    return Optional.of(
        new Fault(
            FaultKind.END,
            "The landing was not heard: the take ends with " + places.of(last) + ".",
            Practice.phrase(expected(last).phrase(), tempo)));
  }

  /** There was time for all, but the first were not heard. */
  Optional<Fault> lateEntry() {
    int first = findings.sollus().stream().mapToInt(SaidSollu::place).min().orElse(0);
    int late = first - findings.alignment().recorded().from();
    if (late == 0 || !Faults.areMissing(late, findings.alignment().recorded().size())) {
      return Optional.empty();
    }
    return Optional.of(
        new Fault(
            FaultKind.LATE_ENTRY,
            (late == 1 ? "The first sollu was" : "The first " + late + " sollus were")
                + " not heard, though the recording was on: you came in at "
                + places.of(first)
                + ", or began there.",
            Practice.phrase(expected(first - late).phrase(), tempo)));
  }

  Optional<Fault> missed() {
    List<Integer> missed = findings.alignment().missed();
    if (!Faults.areMissing(missed.size(), findings.alignment().recorded().size())) {
      return Optional.empty();
    }
    Map<String, List<Integer>> byPhrase =
        missed.stream().collect(Collectors.groupingBy(k -> expected(k).phrase()));
    return byPhrase.entrySet().stream()
        .max(
            Comparator.comparingInt((Map.Entry<String, List<Integer>> e) -> e.getValue().size())
                .thenComparing(Map.Entry::getKey))
        .map(
            worst ->
                new Fault(
                    FaultKind.MISSED,
                    missed.size()
                        + " sollus were not heard, "
                        + (worst.getValue().size() == missed.size()
                            ? "all"
                            : worst.getValue().size() + " of them")
                        + " in "
                        + worst.getKey()
                        + "; the first there is "
                        + places.of(worst.getValue().get(0))
                        + ".",
                    Practice.phrase(worst.getKey(), tempo)));
  }

  /** No fault of the performer's, so it is told only if there is no other. */
  Optional<Fault> cutEnd() {
    int to = findings.alignment().recorded().to();
    return to == findings.alignment().expected().size()
        ? Optional.empty()
        : Optional.of(
            new Fault(
                FaultKind.CUT_END,
                "The landing was not heard: it is not in the recording.",
                Practice.phrase(expected(to).phrase(), tempo)));
  }

  private ExpectedSollu expected(int place) {
    return findings.alignment().expected().get(place);
  }
}
