package org.matraloom.app.open;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.matraloom.app.cli.ReciterOption;
import org.matraloom.app.cli.UserError;
import org.matraloom.door.DoorReply;
import org.matraloom.door.DoorRequest;
import org.matraloom.notation.Problem;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreEditor;
import org.matraloom.notation.ScoreReader;
import org.matraloom.repair.Repair;
import org.matraloom.repair.Repairs;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Tala;
import org.matraloom.script.Script;
import org.matraloom.spell.TalaReader;

/** What a text says: its problems, its landing, its sheet, and what would make it land. */
final class ReadingAnswers {

  private static final int MOST_REPAIRS = 10;

  private final Lexicon lexicon;
  private final List<Tala> talas = List.copyOf(TalaReader.names().values());

  ReadingAnswers(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  DoorReply read(DoorRequest request) throws IOException {
    JsonFields sent = JsonFields.of(request);
    String text = sent.text("text");
    Script script = sent.find("script").map(Scripts::of).orElse(Script.LATIN);
    Reading reading = ScoreReader.read(text, sent.find("name").orElse("score"), lexicon);
    Optional<ShownPiece> piece =
        reading
            .composition()
            .map(known -> ReciterOption.requireOne(known, "this page"))
            .map(known -> ShownPiece.of(text, known, script, lexicon));
    return JsonReply.of(
        json -> {
          json.writeArrayFieldStart("problems");
          for (Problem problem : reading.problems()) {
            write(problem, json);
          }
          json.writeEndArray();
          if (piece.isPresent()) {
            piece.get().write(SentRows.knownBy(sent), json);
          }
        });
  }

  private static void write(Problem problem, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeBooleanField("error", problem.severity() == Problem.Severity.ERROR);
    json.writeNumberField("line", problem.place().line());
    json.writeNumberField("column", problem.place().column());
    json.writeNumberField("width", problem.width());
    json.writeStringField("message", problem.message());
    json.writeStringField("help", problem.help().orElse(""));
    json.writeEndObject();
  }

  DoorReply repairs(DoorRequest request) throws IOException {
    List<Repair> repairs = of(JsonFields.of(request).text("text"));
    List<String> words = repairs.stream().limit(MOST_REPAIRS).map(Repair::words).toList();
    return JsonReply.of(json -> JsonReply.words(json, "repairs", words));
  }

  /** The text with one repair in it; the number counts from 1. */
  DoorReply repair(DoorRequest request) throws IOException {
    JsonFields sent = JsonFields.of(request);
    List<Repair> repairs = of(sent.text("text"));
    int number = sent.number("number");
    if (number < 1 || number > repairs.size()) {
      throw new UserError("there are " + repairs.size() + " repairs, asked for number " + number);
    }
    String text = ScoreEditor.apply(sent.text("text"), repairs.get(number - 1).edits(), lexicon);
    return JsonReply.of(json -> json.writeStringField("text", text));
  }

  private List<Repair> of(String text) {
    Optional<Composition> composition = ScoreReader.read(text, "", lexicon).composition();
    return Repairs.of(
        ReciterOption.requireOne(
            composition.orElseThrow(() -> new UserError("the score has errors; mend them first")),
            "a repair"),
        lexicon,
        talas);
  }
}
