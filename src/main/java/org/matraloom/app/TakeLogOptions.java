package org.matraloom.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import org.matraloom.log.Entry;
import org.matraloom.log.History;
import org.matraloom.log.PracticeLog;
import org.matraloom.log.VoicedTime;
import org.matraloom.score.Performance;
import org.matraloom.take.TakeFindings;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Whether a take is noted in the practice log, and where that is. */
final class TakeLogOptions {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(names = "--no-log", description = "Do not note the take in the practice log.")
  private boolean noLog;

  @Mixin private LogOptions place;

  /** Notes a take that can be judged, once; a log that cannot be written spoils nothing else. */
  void note(TakeFindings findings, Performance performance, Path recording, PrintWriter out) {
    if (noLog) {
      return;
    }
    PrintWriter err = command.commandLine().getErr();
    PracticeLog log = place.log();
    if (findings.doubt().isPresent()) {
      out.println("Not noted in the practice log, as it cannot be judged.");
      return;
    }
    try {
      Entry entry = TakeEntry.of(findings, performance, recording);
      History before = log.read();
      if (before.holds(entry.recording().orElseThrow())) {
        out.println("Noted before in " + log.file());
        return;
      }
      log.append(entry);
      out.println("Noted in " + log.file() + " (--no-log leaves a take out)");
      VoicedTime.of(log.read(), OffsetDateTime.now()).reminders().forEach(out::println);
    } catch (IOException unwritable) {
      err.println("matraloom: not noted in the practice log: " + unwritable.getMessage());
    }
  }
}
