package org.matraloom.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.matraloom.log.LogEntry;
import org.matraloom.log.PracticeLog;
import org.matraloom.log.VoicedTime;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Whether practice is noted in the log, and where that is. */
public final class NoteOptions {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(names = "--no-log", description = "Note nothing in the practice log.")
  private boolean noLog;

  @Mixin private LogOptions place;

  /** Makes a record, which may need a file that cannot be read. */
  @FunctionalInterface
  public interface EntryMaker {
    /**
     * Makes the record.
     *
     * @return the record
     * @throws IOException if what it is about cannot be read
     */
    LogEntry make() throws IOException;
  }

  /**
   * Whether nothing is to be noted.
   *
   * @return whether that option was given
   */
  public boolean isOff() {
    return noLog;
  }

  /**
   * The recorded voice that takes of this log are measured with.
   *
   * @return its name or its folder, or a word that stands for none; empty if none was ever named,
   *     nothing is to be noted or the log cannot be read
   */
  public Optional<String> usualVoice() {
    if (noLog) {
      return Optional.empty();
    }
    try {
      return place.log().read().usualVoice();
    } catch (UserError | IOException untold) {
      return Optional.empty(); // The record that is added later tells it.
    }
  }

  /**
   * Makes a recorded voice the usual one of the log; a log that cannot be written spoils nothing.
   *
   * @param voice its name or its folder, or a word that stands for none
   * @return whether that is new
   */
  public boolean makeUsual(String voice) {
    if (noLog || usualVoice().filter(voice::equals).isPresent()) {
      return false;
    }
    try {
      place.log().setUsualVoice(voice, OffsetDateTime.now());
      return true;
    } catch (UserError | IOException untold) {
      return false; // The record that is added later tells it.
    }
  }

  /**
   * Makes a record and adds it; a log that cannot be written spoils nothing else.
   *
   * @param maker makes the record
   * @param out where it is told
   */
  public void noteMade(EntryMaker maker, PrintWriter out) {
    try {
      note(maker.make(), out);
    } catch (IOException unreadable) {
      tell(MachineWords.of(unreadable));
    }
  }

  /**
   * Adds a record, unless the recording it is about has one; a long use of the voice is told.
   *
   * @param entry the record
   * @param out where it is told
   */
  public void note(LogEntry entry, PrintWriter out) {
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
      tell(MachineWords.of(unwritable));
    }
  }

  private void tell(String why) {
    command.commandLine().getErr().println("matraloom: not noted in the practice log: " + why);
  }
}
