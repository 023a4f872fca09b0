package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.matraloom.app.prove.MissWords;
import org.matraloom.kanakku.ScoreFindings;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Avartana;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/**
 * What the text of a score alone tells the shelf, small enough to be kept for each of thousands.
 */
sealed interface ShelfFacts {

  /**
   * A score that could be read.
   *
   * @param title its title
   * @param avartana its tala
   * @param rounds the matras a beat of each round, as in 4-4-5
   * @param nadais the same, each once, in order
   * @param matras the length of the first round
   * @param tempo beats a minute
   * @param lands whether all that is checked holds
   * @param verdict where it lands, in words
   */
  record Told(
      String title,
      Avartana avartana,
      String rounds,
      List<Integer> nadais,
      Ratio matras,
      Ratio tempo,
      boolean lands,
      String verdict)
      implements ShelfFacts {

    private static final int MOST_ROUNDS = 8;

    private static Told of(ScoreFindings findings) {
      Composition composition = findings.landing().performance().composition();
      List<Span.Round> rounds = findings.landing().performance().rounds();
      Span.Round last = rounds.get(rounds.size() - 1);
      return new Told(
          composition.title(),
          composition.avartana(),
          rounds(rounds),
          rounds.stream().map(Span.Round::nadai).distinct().sorted().toList(),
          rounds.get(0).matras(),
          composition.tempo().beatsPerMinute(),
          findings.passes(),
          MissWords.of(findings.landing().missBeats(), last.matrasPerBeat())
              + (findings.barsHold() ? "" : "; a bar stands wrong"));
    }

    private static String rounds(List<Span.Round> rounds) {
      return rounds.stream()
              .limit(MOST_ROUNDS)
              .map(round -> Integer.toString(round.matrasPerBeat()))
              .collect(Collectors.joining("-"))
          + (rounds.size() > MOST_ROUNDS ? "-..." : "");
    }

    @Override
    public void write(JsonGenerator json) throws IOException {
      json.writeStringField("title", title);
      json.writeStringField("tala", avartana.tala().name());
      json.writeNumberField("beats", avartana.beats());
      json.writeStringField("rounds", rounds);
      json.writeArrayFieldStart("nadais");
      for (int nadai : nadais) {
        json.writeNumber(nadai);
      }
      json.writeEndArray();
      json.writeStringField("matras", matras.toMixed());
      json.writeNumberField("length", matras.toDouble());
      json.writeStringField("tempo", tempo.toMixed());
      json.writeBooleanField("lands", lands);
      json.writeStringField("verdict", verdict);
    }

    @Override
    public Optional<String> practisedAs() {
      return Optional.of(title);
    }
  }

  /**
   * A text that is no score.
   *
   * @param problem the first thing that is wrong
   * @param line where, from 1; 0 if the file could not be read
   */
  record Unread(String problem, int line) implements ShelfFacts {
    @Override
    public void write(JsonGenerator json) throws IOException {
      json.writeStringField("problem", problem);
      if (line > 0) {
        json.writeNumberField("line", line);
      }
    }

    @Override
    public Optional<String> practisedAs() {
      return Optional.empty();
    }
  }

  /** Reads a score and proves it. */
  static ShelfFacts of(String text, Lexicon lexicon) {
    Reading reading = ScoreReader.read(text, "", lexicon);
    if (reading.composition().isEmpty()) {
      var first = reading.problems().get(0);
      return new Unread(first.message(), first.place().line());
    }
    return Told.of(ScoreFindings.of(reading.composition().get()));
  }

  /** Writes them as fields. */
  void write(JsonGenerator json) throws IOException;

  /** The title by which the practice log knows the piece; none if it could not be read. */
  Optional<String> practisedAs();
}
