package org.matraloom.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.matraloom.kanakku.FalseClaim;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.Structure;
import org.matraloom.kanakku.Yati;
import org.matraloom.notation.Problem;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;

/**
 * One score of a folder.
 *
 * @param file its file
 * @param landing where it ends, if it could be read
 * @param barsHold whether every bar stands where an anga or an avartana ends
 * @param yati the shape of the purvanga of its first round
 * @param problem the first problem, if it could not be read
 */
record CatalogueEntry(
    Path file, Optional<Landing> landing, boolean barsHold, Yati yati, String problem) {

  private static final int MOST_ROUNDS = 6;

  static CatalogueEntry read(Path file, Lexicon lexicon) {
    Reading reading = ScoreReader.read(file, lexicon);
    if (reading.composition().isEmpty()) {
      Problem first = reading.problems().get(0);
      String place = first.width() > 0 ? "line " + first.place().line() + ": " : "";
      return new CatalogueEntry(file, Optional.empty(), true, Yati.NONE, place + first.message());
    }
    Composition composition = reading.composition().get();
    Performance performance = Performance.of(composition);
    Span.Round round = performance.rounds().get(0);
    Yati yati = Structure.of(composition, round.phrase(), round.nadai()).yati();
    boolean barsHold = FalseClaim.in(performance).isEmpty();
    return new CatalogueEntry(file, Optional.of(Landing.of(performance)), barsHold, yati, "");
  }

  /** Whether it passes its check: it lands, and no bar claims what is not so. */
  boolean passes() {
    return barsHold && landing.filter(Landing::lands).isPresent();
  }

  String title() {
    return landing.map(known -> known.performance().composition().title()).orElse("");
  }

  String tala() {
    return landing
        .map(known -> known.performance().composition().avartana())
        .map(a -> a.tala().name() + (a.kalai() > 1 ? ", kalai " + a.kalai() : ""))
        .orElse("");
  }

  String matras() {
    return landing.map(known -> known.performance().rounds().get(0).matras().toMixed()).orElse("");
  }

  /** The matras a beat of each round, as in 4-4-5. */
  String rounds() {
    List<Span.Round> rounds = landing.map(known -> known.performance().rounds()).orElse(List.of());
    return rounds.stream()
            .limit(MOST_ROUNDS)
            .map(round -> Integer.toString(round.matrasPerBeat()))
            .collect(Collectors.joining("-"))
        + (rounds.size() > MOST_ROUNDS ? "-..." : "");
  }

  String verdict() {
    if (landing.isEmpty()) {
      return "cannot be read: " + problem;
    }
    List<Span.Round> rounds = landing.get().performance().rounds();
    return MissWords.of(landing.get().missBeats(), rounds.get(rounds.size() - 1).matrasPerBeat())
        + (barsHold ? "" : "; a bar stands wrong");
  }
}
