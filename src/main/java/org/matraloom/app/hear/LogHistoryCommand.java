package org.matraloom.app.hear;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LogOptions;
import org.matraloom.app.cli.PictureFile;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.log.LogEntry;
import org.matraloom.log.PracticeLog;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks at the same places over many takes, of one student or of a class. */
@Command(
    name = "history",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Show the same places of a piece over many takes: what is a habit, and since when",
      "it is better or worse.",
      "Of one log every place; of several logs, or of a folder of them, a row for each."
    },
    footer = {
      "",
      "A habit is told from 3 takes on, where the mean is farther off than chance",
      "allows for; better or worse from 5 takes on, where a rank test says so. Only",
      "what the take command measured counts. A log is called by the name of its file.",
      LogOptions.WHERE,
      "Example: matraloom log history --piece \"Gutter Song\"",
      "A class: matraloom log history class/heron.jsonl class/otter.jsonl"
    })
final class LogHistoryCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(
      arity = "0..*",
      paramLabel = "LOG",
      description = "Logs, or folders with logs (the usual log if none is given).")
  private List<Path> files = List.of();

  @Option(names = "--piece", paramLabel = "TITLE", description = "Show one piece only.")
  private String piece;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "Write every place of every take as a table; - prints it.")
  private Path csv;

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "Draw them as FILE.svg or FILE.png: one piece, the newest if none is named.")
  private Path picture;

  @Option(names = "--json", description = "Print everything as JSON.")
  private boolean json;

  @Mixin private LogOptions place;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    if (!files.isEmpty() && place.isNamed()) {
      throw new UserError("give --log-file or the names of logs, not both");
    }
    if (picture != null) {
      PictureFile.requireEnding(picture);
    }
    List<NamedLog> logs = files.isEmpty() ? usual() : NamedLog.read(files, place);
    List<String> pieces = pieces(logs);
    if (picture != null) {
      if (pieces.isEmpty()) {
        throw new UserError("no take was measured yet, so there is nothing to draw");
      }
      PictureFile.write(HistoryPicture.of(logs, pieces.get(0)), picture);
      out.println(picture + ": " + pieces.get(0));
    }
    if (csv != null) {
      writeCsv(logs, pieces, out);
    }
    if (json) {
      HistoryJson.write(logs, pieces, out);
    } else if (pieces.isEmpty() && csv == null) {
      out.println("No take was measured yet. See: matraloom take --help");
    } else if (picture == null && csv == null) {
      new HistoryText(logs, out).print(pieces);
    }
    return ExitCode.DONE;
  }

  private List<NamedLog> usual() throws IOException {
    PracticeLog log = place.log();
    return List.of(new NamedLog("practice", log.file(), place.read(log)));
  }

  private void writeCsv(List<NamedLog> logs, List<String> pieces, PrintWriter out)
      throws IOException {
    if (csv.toString().equals("-")) {
      HistoryCsv.write(logs, pieces, out);
    } else {
      WholeFile.writeText(csv, file -> HistoryCsv.write(logs, pieces, file));
      out.println(csv);
    }
  }

  /** The pieces with takes, those practised last first; of two at once, by the alphabet. */
  private List<String> pieces(List<NamedLog> logs) {
    Map<String, Instant> newest = new TreeMap<>();
    for (NamedLog log : logs) {
      for (LogEntry entry : log.history().entries()) {
        if (entry.kind() == LogEntry.Kind.TAKE) {
          newest.merge(entry.piece(), entry.when().toInstant(), (a, b) -> a.isAfter(b) ? a : b);
        }
      }
    }
    if (piece == null) {
      List<String> pieces = new ArrayList<>(newest.keySet());
      pieces.sort(Comparator.comparing(newest::get, Comparator.reverseOrder()));
      return pieces;
    } else if (!newest.containsKey(piece)) {
      throw new UserError(
          "no take of "
              + piece
              + " was measured; there are takes of "
              + (newest.isEmpty() ? "no piece yet" : String.join(", ", newest.keySet())));
    }
    return List.of(piece);
  }
}
