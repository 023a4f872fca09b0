package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.matraloom.app.prove.MissWords;
import org.matraloom.kanakku.ScoreFindings;
import org.matraloom.log.CleanTempo;
import org.matraloom.log.History;
import org.matraloom.log.LogEntry;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;

/**
 * What the shelf says of one score.
 *
 * @param reading the score as it was read
 * @param findings what it is like, if it could be read
 * @param history the practice log
 */
record ShelfEntry(Reading reading, Optional<ScoreFindings> findings, History history) {

  private static final int MOST_ROUNDS = 8;

  static ShelfEntry of(String text, Lexicon lexicon, History history) {
    Reading reading = ScoreReader.read(text, "", lexicon);
    return new ShelfEntry(reading, reading.composition().map(ScoreFindings::of), history);
  }

  void write(JsonGenerator json) throws IOException {
    if (findings.isEmpty()) {
      var first = reading.problems().get(0);
      json.writeStringField("problem", first.message());
      json.writeNumberField("line", first.place().line());
      return;
    }
    Performance performance = findings.get().landing().performance();
    Composition composition = performance.composition();
    List<Span.Round> rounds = performance.rounds();
    Span.Round last = rounds.get(rounds.size() - 1);
    json.writeStringField("title", composition.title());
    json.writeStringField("tala", composition.avartana().tala().name());
    json.writeNumberField("beats", composition.avartana().beats());
    json.writeStringField("rounds", rounds(rounds));
    json.writeArrayFieldStart("nadais");
    for (int nadai : rounds.stream().map(Span.Round::nadai).distinct().sorted().toList()) {
      json.writeNumber(nadai);
    }
    json.writeEndArray();
    json.writeStringField("matras", rounds.get(0).matras().toMixed());
    json.writeNumberField("length", rounds.get(0).matras().toDouble());
    json.writeStringField("tempo", composition.tempo().beatsPerMinute().toMixed());
    json.writeBooleanField("lands", findings.get().passes());
    json.writeStringField(
        "verdict",
        MissWords.of(findings.get().landing().missBeats(), last.matrasPerBeat())
            + (findings.get().barsHold() ? "" : "; a bar stands wrong"));
    practised(composition.title(), json);
  }

  /** The matras a beat of each round, as in 4-4-5. */
  private static String rounds(List<Span.Round> rounds) {
    return rounds.stream()
            .limit(MOST_ROUNDS)
            .map(round -> Integer.toString(round.matrasPerBeat()))
            .collect(Collectors.joining("-"))
        + (rounds.size() > MOST_ROUNDS ? "-..." : "");
  }

  private void practised(String title, JsonGenerator json) throws IOException {
    Optional<LogEntry> latest =
        history.of(title).stream().max(Comparator.comparing(entry -> entry.when().toInstant()));
    if (latest.isPresent()) {
      json.writeStringField("practised", latest.get().when().toLocalDate().toString());
    }
    var clean =
        CleanTempo.of(history, title).get(0).points().stream()
            .filter(CleanTempo.Point::clean)
            .mapToDouble(CleanTempo.Point::tempo)
            .max();
    if (clean.isPresent()) {
      json.writeNumberField("clean", Math.round(clean.getAsDouble()));
    }
  }
}
