package org.matraloom.app.hear;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.matraloom.app.cli.Json;
import org.matraloom.log.CleanTempo;
import org.matraloom.log.DamagedLine;
import org.matraloom.log.History;
import org.matraloom.log.LogEntry;
import org.matraloom.log.PlaceNote;
import org.matraloom.log.TempoRule;
import org.matraloom.log.VoicedTime;

/** The log as JSON. */
final class LogJson {

  private LogJson() {}

  static void write(Path file, History history, VoicedTime voice, TempoRule rule, PrintWriter out)
      throws IOException {
    try (Json text = Json.to(out)) {
      JsonGenerator json = text.generator();
      json.writeStartObject();
      json.writeStringField("file", file.toString());
      json.writeObjectFieldStart("voice");
      json.writeNumberField("todaySeconds", voice.todaySeconds());
      json.writeNumberField("sinceRestSeconds", voice.sinceRestSeconds());
      json.writeEndObject();
      json.writeArrayFieldStart("pieces");
      for (String piece : history.pieces()) {
        piece(piece, history, rule, json);
      }
      json.writeEndArray();
      json.writeArrayFieldStart("entries");
      for (LogEntry entry : history.entries()) {
        entry(entry, json);
      }
      json.writeEndArray();
      json.writeArrayFieldStart("takenBack");
      for (LogEntry entry : history.withdrawn()) {
        entry(entry, json);
      }
      json.writeEndArray();
      json.writeArrayFieldStart("damaged");
      for (DamagedLine line : history.damaged()) {
        json.writeStartObject();
        json.writeNumberField("line", line.number());
        json.writeNumberField("bytes", line.bytes());
        json.writeStringField("reason", line.reason());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
  }

  private static void piece(String piece, History history, TempoRule rule, JsonGenerator json)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("piece", piece);
    json.writeArrayFieldStart("next");
    for (CleanTempo row : CleanTempo.of(history, piece)) {
      Optional<TempoRule.Advice> advice = rule.next(row.points());
      if (advice.isPresent()) {
        json.writeStartObject();
        json.writeNumberField("round", row.round());
        json.writeNumberField("tempo", advice.get().tempo());
        json.writeStringField("move", advice.get().move().name().toLowerCase(Locale.ROOT));
        json.writeNumberField("inARow", advice.get().inARow());
        json.writeBooleanField("clean", advice.get().clean());
        json.writeNumberField("from", advice.get().from());
        json.writeEndObject();
      }
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void entry(LogEntry entry, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("when", entry.when().toString());
    json.writeStringField("kind", entry.kind().name().toLowerCase(Locale.ROOT));
    json.writeStringField("piece", entry.piece());
    if (entry.tempo().isPresent()) {
      json.writeNumberField("tempo", entry.tempo().getAsDouble());
    }
    if (entry.clean().isPresent()) {
      json.writeBooleanField("clean", entry.clean().get());
    }
    if (entry.landingErrorMs().isPresent()) {
      json.writeNumberField("landingErrorMs", entry.landingErrorMs().getAsDouble());
    }
    json.writeNumberField("voicedSeconds", entry.voicedSeconds());
    json.writeArrayFieldStart("rounds");
    for (LogEntry.RoundEntry round : entry.rounds()) {
      json.writeStartObject();
      json.writeNumberField("round", round.round());
      json.writeNumberField("nadai", round.nadai());
      json.writeNumberField("tempo", round.tempo());
      json.writeBooleanField("clean", round.clean());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("places");
    for (PlaceNote note : entry.outcome().places()) {
      json.writeStartObject();
      json.writeStringField("at", note.place().kind().name().toLowerCase(Locale.ROOT));
      json.writeNumberField("round", note.place().round());
      json.writeStringField("name", note.place().name());
      json.writeNumberField("off", note.off());
      json.writeEndObject();
    }
    json.writeEndArray();
    if (entry.recording().isPresent()) {
      json.writeStringField("recording", entry.recording().get());
    }
    json.writeStringField("remark", entry.remark());
    json.writeEndObject();
  }
}
