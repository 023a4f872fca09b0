package org.matraloom.app.prove;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.matraloom.form.Yati;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.ScoreFindings;
import org.matraloom.notation.Problem;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Span;

/**
 * One score of a folder.
 *
 * @param file its file
 * @param findings what it is like, if it could be read
 * @param problem the first problem, if it could not be read
 */
record CatalogueEntry(Path file, Optional<ScoreFindings> findings, String problem) {

  private static final int MOST_ROUNDS = 6;

  static CatalogueEntry read(Path file, Lexicon lexicon) {
    Reading reading = ScoreReader.read(file, lexicon);
    if (reading.composition().isEmpty()) {
      Problem first = reading.problems().get(0);
      String place = first.width() > 0 ? "line " + first.place().line() + ": " : "";
      return new CatalogueEntry(file, Optional.empty(), place + first.message());
    }
    return new CatalogueEntry(file, reading.composition().map(ScoreFindings::of), "");
  }

  Optional<Landing> landing() {
    return findings.map(ScoreFindings::landing);
  }

  /** Whether it passes its check: it lands, and no bar claims what is not so. */
  boolean passes() {
    return findings.filter(ScoreFindings::passes).isPresent();
  }

  Yati yati() {
    return findings.map(ScoreFindings::yati).orElse(Yati.NONE);
  }

  String title() {
    return landing().map(known -> known.performance().composition().title()).orElse("");
  }

  String tala() {
    return landing()
        .map(known -> known.performance().avartana())
        .map(a -> a.tala().name() + (a.kalai() > 1 ? ", kalai " + a.kalai() : ""))
        .orElse("");
  }

  String matras() {
    return landing()
        .map(known -> known.performance().rounds().get(0).matras().toMixed())
        .orElse("");
  }

  /** The matras a beat of each round, as in 4-4-5. */
  String rounds() {
    List<Span.Round> rounds =
        landing().map(known -> known.performance().rounds()).orElse(List.of());
    return rounds.stream()
            .limit(MOST_ROUNDS)
            .map(round -> Integer.toString(round.matrasPerBeat()))
            .collect(Collectors.joining("-"))
        + (rounds.size() > MOST_ROUNDS ? "-..." : "");
  }

  String verdict() {
    if (findings.isEmpty()) {
      return "cannot be read: " + problem;
    }
    List<Span.Round> rounds = findings.get().landing().performance().rounds();
    return MissWords.of(
            findings.get().landing().missBeats(), rounds.get(rounds.size() - 1).matrasPerBeat())
        + (findings.get().barsHold() ? "" : "; a bar stands wrong")
        + (findings.get().placesHold() ? "" : "; a piece enters or lands wrong");
  }
}
