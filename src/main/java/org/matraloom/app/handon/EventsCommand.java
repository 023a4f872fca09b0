package org.matraloom.app.handon;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.TimelineOptions;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.TwoReciters;
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
public final class EventsCommand implements Callable<Integer> {

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
    Composition piece = score.readAll();
    if (TwoReciters.in(piece)) {
      both(TwoReciters.of(piece));
      return ExitCode.DONE;
    }
    Timeline timeline = options.timeline(piece);
    FrameClock clock = options.clock(timeline, rate);
    PrintWriter out = command.commandLine().getOut();
    if (form != null && form.json) {
      EventTable.printJson(timeline, clock, out);
    } else {
      EventTable.printCsv(timeline, clock, out);
    }
    return ExitCode.DONE;
  }

  private void both(TwoReciters reciters) throws IOException {
    Timeline first = options.timeline(reciters.first());
    Timeline second = options.beside(reciters.second());
    FrameClock clock = options.clock(first, rate);
    PrintWriter out = command.commandLine().getOut();
    if (form != null && form.json) {
      EventTable.printJson(first, second, clock, out);
    } else {
      EventTable.printCsv(first, second, clock, out);
    }
  }
}
