package org.matraloom.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import org.matraloom.log.Entry;
import org.matraloom.log.PracticeLog;
import org.matraloom.log.VoicedTime;
import org.matraloom.score.Performance;
import org.matraloom.take.TakeFindings;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Whether practice is noted in the log, and where that is. */
final class NoteOptions {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(names = "--no-log", description = "Note nothing in the practice log.")
  private boolean noLog;

  @Mixin private LogOptions place;

  /** Notes a take that can be judged, once; a log that cannot be written spoils nothing else. */
  void note(TakeFindings findings, Performance performance, Path recording, PrintWriter out) {
    if (noLog) {
      return;
    }
    if (findings.doubt().isPresent()) {
      out.println("Not noted in the practice log, as it cannot be judged.");
      return;
    }
    try {
      note(TakeEntry.of(findings, performance, recording), out);
    } catch (IOException unreadable) {
      tell(unreadable);
    }
  }

  /** Adds a record, unless the recording it is about has one; a long use of the voice is told. */
  void note(Entry entry, PrintWriter out) {
    if (noLog) {
      return;
    }
    try {
      PracticeLog log = place.log();
      if (entry.recording().isPresent() && log.read().holds(entry.recording().get())) {
        out.println("Noted before in " + log.file());
        return;
      }
      log.append(entry);
      out.println("Noted in " + log.file() + " (not with --no-log)");
      VoicedTime.of(log.read(), OffsetDateTime.now())
          .reminder()
          .ifPresent(words -> out.println(Paragraph.of(words)));
    } catch (UserError misnamed) {
      tell(misnamed.getMessage());
    } catch (IOException unwritable) {
      tell(unwritable);
    }
  }

  private void tell(IOException problem) {
    tell(
        problem instanceof FileSystemException file
            ? FileTrouble.explain(file)
            : problem.getMessage());
  }

  private void tell(String why) {
    command.commandLine().getErr().println("matraloom: not noted in the practice log: " + why);
  }
}
