package org.matraloom.app.handon;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.matraloom.app.cli.Json;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;

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

  /** Both reciters in one order of time, with a column that says which. */
  static void printCsv(Timeline first, Timeline second, FrameClock clock, PrintWriter out)
      throws IOException {
    CSVPrinter table = CSVFormat.RFC4180.print(out);
    table.printRecord("kind", "reciter", "round", "beat", "seconds", "frame", "text");
    for (ReciterRows.Line line : ReciterRows.of(first, second)) {
      table.printRecord(
          line.row().kind(),
          line.reciter(),
          line.row().round(),
          line.beat(),
          String.format(Locale.ROOT, "%.6f", clock.secondsAt(line.beat())),
          clock.frameAt(line.beat()),
          line.row().text());
    }
  }

  /** The same as JSON. */
  static void printJson(Timeline first, Timeline second, FrameClock clock, PrintWriter out)
      throws IOException {
    try (Json json = Json.to(out)) {
      JsonGenerator generator = json.generator();
      generator.writeStartArray();
      for (ReciterRows.Line line : ReciterRows.of(first, second)) {
        write(line.row(), line.beat(), Optional.of(line.reciter()), clock, generator);
      }
      generator.writeEndArray();
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
        write(row, event.beat(), Optional.empty(), clock, generator);
      }
      generator.writeEndArray();
    }
  }

  private static void write(
      EventRow row, Ratio beat, Optional<Integer> reciter, FrameClock clock, JsonGenerator json)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("kind", row.kind());
    if (reciter.isPresent()) {
      json.writeNumberField("reciter", reciter.get());
    }
    json.writeNumberField("round", row.round());
    json.writeStringField("beat", beat.toString());
    json.writeNumberField("seconds", clock.secondsAt(beat));
    json.writeNumberField("frame", clock.frameAt(beat));
    json.writeStringField("text", row.text());
    if (row.beats().isPresent()) {
      json.writeStringField("beats", row.beats().get().toString());
    }
    json.writeEndObject();
  }
}
