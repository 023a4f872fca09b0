package org.matraloom.app.hear;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.OffsetDateTime;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LogOptions;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.UserError;
import org.matraloom.log.LogEntry;
import org.matraloom.log.PracticeLog;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Takes back what was noted last. */
@Command(
    name = "undo",
    mixinStandardHelpOptions = true,
    description = {
      "Take back the record that was added last.",
      "It counts no longer, but stays in the file: a line is added that withdraws it.",
      "Again, and the one before it is taken back too. To bring one back, note it again."
    },
    footer = {"", LogOptions.WHERE, "Example: matraloom log undo"})
final class LogUndoCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private LogOptions place;

  @Override
  public Integer call() throws IOException {
    PracticeLog log = place.log();
    LogEntry entry =
        log.withdrawNewest(OffsetDateTime.now())
            .orElseThrow(() -> new UserError("there is nothing to take back in " + log.file()));
    PrintWriter out = command.commandLine().getOut();
    out.println(Paragraph.of("taken back: " + EntryWords.of(entry)));
    out.println("It stays, marked as taken back, in " + log.file());
    return ExitCode.DONE;
  }
}
