package org.matraloom.app.hear;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LogOptions;
import org.matraloom.app.cli.PictureFile;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.log.History;
import org.matraloom.log.LogEntry;
import org.matraloom.log.PracticeLog;
import org.matraloom.log.VoicedTime;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows the practice log. */
@Command(
    name = "log",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Show what was practised, and suggest the next tempo.",
      "The fastest clean tempo of each day, and how long the voice was in use today.",
      "The take command adds a record for every take that it measures."
    },
    subcommands = {LogAddCommand.class, LogUndoCommand.class, LogHistoryCommand.class},
    footer = {
      "",
      "The next tempo, unless other numbers are given:",
      "  Down by 10 beats a minute from the newest take if the last 2 takes were",
      "  misses, at whatever tempi. Up by 5 from the slower of the last 2 takes if both",
      "  were clean and the newest was at most 2.5 (half a step) faster than the other.",
      "  Otherwise the tempo of the newest take once more.",
      LogOptions.WHERE,
      "Example: matraloom log --picture progress.svg",
      "After more than 15 voiced minutes a rest is suggested: a general caution,",
      "not medical advice."
    })
public final class LogCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Option(names = "--piece", paramLabel = "TITLE", description = "Show one piece only.")
  private String piece;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "Write every record, and every round of it, as a table; - prints it.")
  private Path csv;

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "Draw tempo over time, as FILE.svg or FILE.png.")
  private Path picture;

  @Option(names = "--json", description = "Print everything as JSON.")
  private boolean json;

  @Mixin private TempoRuleOptions rule;

  @Mixin private LogOptions place;

  @Option(
      names = "--mend",
      description = "Set lines that cannot be read aside, in a file beside the log.")
  private boolean mend;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    if (mend) {
      PracticeLog log = place.log();
      int moved = log.mend();
      out.println(moved + (moved == 1 ? " line" : " lines") + " moved to " + log.damagedFile());
      return ExitCode.DONE;
    }
    place.refuseToWriteOver(csv);
    place.refuseToWriteOver(picture);
    History all = place.read();
    History history = chosen(all);
    VoicedTime voice = VoicedTime.of(all, OffsetDateTime.now());
    boolean isWritten = csv != null || picture != null;
    if (picture != null) {
      PictureFile.write(LogPicture.of(history), picture);
      out.println(picture);
    }
    if (csv != null) {
      writeCsv(history, out);
    }
    if (json) {
      LogJson.write(place.log().file(), history, voice, rule.rule(), out);
    } else if (!isWritten) {
      new LogText(history, rule.rule()).print(place.log().file(), voice, out);
    }
    return ExitCode.DONE;
  }

  private void writeCsv(History history, PrintWriter out) throws IOException {
    if (csv.toString().equals("-")) {
      LogCsv.write(history, out);
    } else {
      WholeFile.writeText(csv, file -> LogCsv.write(history, file));
      out.println(csv);
    }
  }

  private History chosen(History all) {
    if (piece == null) {
      return all;
    }
    List<LogEntry> entries = all.of(piece);
    if (entries.isEmpty()) {
      throw new UserError(
          "the log has nothing about "
              + piece
              + "; it knows "
              + (all.pieces().isEmpty() ? "no piece yet" : String.join(", ", all.pieces())));
    }
    List<LogEntry> withdrawn =
        all.withdrawn().stream().filter(entry -> entry.piece().equals(piece)).toList();
    return new History(entries, all.damaged(), withdrawn, all.usualVoice());
  }
}
