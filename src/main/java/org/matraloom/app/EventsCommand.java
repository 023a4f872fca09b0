package org.matraloom.app;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.FrameClock;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints the timeline of a score. */
@Command(
    name = "events",
    mixinStandardHelpOptions = true,
    description = "Print the timeline of a score: kind, round, beat, seconds, frame, text.",
    footer = {"", "Example: matraloom events samples-synth/gutter-song.loom --csv"})
final class EventsCommand implements Callable<Integer> {

  private static final class Form {
    @Option(names = "--csv", description = "Write CSV (the default).")
    private boolean csv;

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;
  }

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Mixin private TimelineOptions options;

  @ArgGroup private Form form;

  @Option(
      names = "--rate",
      paramLabel = "HZ",
      defaultValue = "48000",
      description = "Frames a second, 8000 to 192000 (default ${DEFAULT-VALUE}).")
  private int rate;

  @Override
  public Integer call() throws IOException {
    Timeline timeline = options.timeline(score.read());
    FrameClock clock = options.clock(timeline, rate);
    PrintWriter out = command.commandLine().getOut();
    if (form != null && form.json) {
      printJson(timeline, clock, out);
    } else {
      printCsv(timeline, clock, out);
    }
    return ExitCode.DONE;
  }

  private static void printCsv(Timeline timeline, FrameClock clock, PrintWriter out) {
    out.print("kind,round,beat,seconds,frame,text\r\n");
    for (Event event : timeline) {
      EventRow row = EventRow.of(event);
      out.printf(
          Locale.ROOT,
          "%s,%d,%s,%.6f,%d,%s\r\n",
          row.kind(),
          row.round(),
          event.beat(),
          clock.secondsAt(event.beat()),
          clock.frameAt(event.beat()),
          quoted(row.text()));
    }
  }

  private static String quoted(String text) {
    return text.matches("[^\",\r\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }

  private static void printJson(Timeline timeline, FrameClock clock, PrintWriter out)
      throws IOException {
    try (Json json = Json.to(out)) {
      JsonGenerator generator = json.generator();
      generator.writeStartArray();
      for (Event event : timeline) {
        EventRow row = EventRow.of(event);
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
