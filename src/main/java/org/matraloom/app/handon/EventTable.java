package org.matraloom.app.handon;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.matraloom.app.cli.Json;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.FrameClock;

/** The timeline as a table: kind, round, beat, seconds, frame, text. */
final class EventTable {

  private EventTable() {}

  static void printCsv(Timeline timeline, FrameClock clock, PrintWriter out) throws IOException {
    CSVPrinter table = CSVFormat.RFC4180.print(out);
    table.printRecord("kind", "round", "beat", "seconds", "frame", "text");
    int round = 0;
    for (Event event : timeline) {
      EventRow row = EventRow.of(event, round);
      round = row.round();
      table.printRecord(
          row.kind(),
          row.round(),
          event.beat(),
          String.format(Locale.ROOT, "%.6f", clock.secondsAt(event.beat())),
          clock.frameAt(event.beat()),
          row.text());
    }
  }

  static void printJson(Timeline timeline, FrameClock clock, PrintWriter out) throws IOException {
    try (Json json = Json.to(out)) {
      JsonGenerator generator = json.generator();
      generator.writeStartArray();
      int round = 0;
      for (Event event : timeline) {
        EventRow row = EventRow.of(event, round);
        round = row.round();
        generator.writeStartObject();
        generator.writeStringField("kind", row.kind());
        generator.writeNumberField("round", row.round());
        generator.writeStringField("beat", event.beat().toString());
        generator.writeNumberField("seconds", clock.secondsAt(event.beat()));
        generator.writeNumberField("frame", clock.frameAt(event.beat()));
        generator.writeStringField("text", row.text());
        if (row.beats().isPresent()) {
          generator.writeStringField("beats", row.beats().get().toString());
        }
        generator.writeEndObject();
      }
      generator.writeEndArray();
    }
  }
}
