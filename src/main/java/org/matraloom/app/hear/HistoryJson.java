package org.matraloom.app.hear;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.matraloom.app.cli.Json;
import org.matraloom.log.PlaceFinding;
import org.matraloom.log.PlaceHistory;
import org.matraloom.log.PlaceTrend;
import org.matraloom.log.ScorePlace;

/** Many takes as JSON: log by log and place by place, with every take. */
final class HistoryJson {

  private HistoryJson() {}

  static void write(List<NamedLog> logs, List<String> pieces, PrintWriter out) throws IOException {
    try (Json text = Json.to(out)) {
      JsonGenerator json = text.generator();
      json.writeStartArray();
      for (NamedLog log : logs) {
        json.writeStartObject();
        json.writeStringField("log", log.name());
        json.writeStringField("file", log.file().toString());
        json.writeNumberField("damagedLines", log.history().damaged().size());
        json.writeArrayFieldStart("pieces");
        for (String piece : pieces) {
          json.writeStartObject();
          json.writeStringField("piece", piece);
          json.writeNumberField("takes", PlaceHistory.takes(log.history(), piece).size());
          json.writeArrayFieldStart("places");
          for (PlaceFinding finding : PlaceFinding.of(log.history(), piece)) {
            place(finding, json);
          }
          json.writeEndArray();
          json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
      }
      json.writeEndArray();
    }
  }

  private static void place(PlaceFinding finding, JsonGenerator json) throws IOException {
    PlaceHistory history = finding.history();
    ScorePlace place = history.place();
    json.writeStartObject();
    json.writeStringField("place", word(place.kind()));
    json.writeNumberField("round", place.round());
    json.writeStringField("name", place.name());
    json.writeStringField("unit", place.kind().unit());
    rounded("mean", history.mean(), json);
    rounded("spread", history.spread(), json);
    json.writeStringField("habit", word(finding.habit()));
    trend(finding.trend(), json);
    if (finding.isTold()) {
      json.writeStringField("words", HabitWords.sentences(finding));
    }
    json.writeArrayFieldStart("takes");
    for (PlaceHistory.Point point : history.points()) {
      json.writeStartObject();
      json.writeStringField("when", point.when().toString());
      rounded("off", point.off(), json);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void trend(Optional<PlaceTrend> trend, JsonGenerator json) throws IOException {
    if (trend.isEmpty()) {
      json.writeNullField("trend");
      return;
    }
    json.writeObjectFieldStart("trend");
    json.writeBooleanField("better", trend.get().better());
    json.writeStringField("since", trend.get().since().toString());
    json.writeNumberField("takesBefore", trend.get().before().points().size());
    rounded("offBefore", trend.get().offBefore(), json);
    rounded("offSince", trend.get().offAfter(), json);
    json.writeEndObject();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private static void rounded(String name, double value, JsonGenerator json) throws IOException {
    json.writeNumberField(name, Math.round(10 * value) / 10.0);
  }
}
