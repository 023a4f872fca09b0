package org.matraloom.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.matraloom.device.UserFolders;
import org.matraloom.log.DamagedLine;
import org.matraloom.log.History;
import org.matraloom.log.PracticeLog;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Which practice log a command works on. */
public final class LogOptions {

  /** The environment variable that names another log. */
  public static final String VARIABLE = "MATRALOOM_LOG";

  /** Where the usual log is, for the end of a help text. */
  public static final String WHERE =
      "The log is practice.jsonl in $XDG_DATA_HOME/matraloom, usually%n"
          + "~/.local/share/matraloom, on macOS ~/Library/Application Support/matraloom,%n"
          + "on Windows %%LOCALAPPDATA%%\\matraloom. MATRALOOM_LOG or --log-file names%n"
          + "another file. Nothing leaves this machine.";

  private static final String USUAL_NAME = "practice.jsonl";
  private static final int MOST_TOLD = 5;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--log-file",
      paramLabel = "FILE",
      description = "Another practice log than the usual one.")
  private Path file;

  /**
   * The log that was named by the option or the environment, or else the usual one.
   *
   * @return the log; its file need not exist
   * @throws UserError if what was named cannot be a file
   */
  public PracticeLog log() {
    Optional<Path> named = named();
    Path log = named.orElseGet(LogOptions::usualFile);
    if (Files.isDirectory(log)) {
      throw new UserError(
          (named.isPresent() ? "--log-file" : VARIABLE)
              + " is "
              + log
              + ", a folder; give a file, such as "
              + log.resolve(USUAL_NAME));
    }
    if (Files.exists(log) && !Files.isRegularFile(log)) {
      throw new UserError(log + " is a pipe or a device; the practice log is a file");
    }
    PracticeLog found = new PracticeLog(log);
    if (!found.mayBeLog()) {
      throw new UserError(
          log + " is no practice log, so nothing is added to it; give another file");
    }
    return found;
  }

  /**
   * Refuses a file to write that is the log itself.
   *
   * @param written a file to write; null if none is asked for
   * @throws UserError if it is the log
   */
  public void refuseToWriteOver(Path written) {
    try {
      if (written != null && Files.isSameFile(written, log().file())) {
        throw new UserError(
            written + " is the practice log itself; give the new file another name");
      }
    } catch (IOException notThere) {
      // What is not there is not the log.
    }
  }

  /**
   * Whether the option names the log.
   *
   * @return true if it does, before or after the name of a command
   */
  public boolean isNamed() {
    return named().isPresent();
  }

  /** The option may stand before or after the name of a command that belongs to another. */
  private Optional<Path> named() {
    if (file != null || command.parent() == null) {
      return Optional.ofNullable(file);
    }
    return Optional.ofNullable(command.parent().findOption("--log-file")).map(OptionSpec::getValue);
  }

  /**
   * A command of the log to type, on the log that is used now.
   *
   * @param words the command and its options, after "matraloom log"
   * @return the whole command line
   */
  public String typed(String words) {
    String place = named().map(log -> " --log-file " + ShellWord.quoted(log + "")).orElse("");
    return "matraloom log " + words + place;
  }

  private String typed(String words, PracticeLog log) {
    return log.file().equals(log().file())
        ? typed(words)
        : "matraloom log " + words + " --log-file " + ShellWord.quoted(log.file() + "");
  }

  private static Path usualFile() {
    String named = System.getenv().getOrDefault(VARIABLE, "");
    try {
      return named.isBlank() ? UserFolders.data().resolve(USUAL_NAME) : Path.of(named);
    } catch (InvalidPathException noPath) {
      throw new UserError(VARIABLE + " is " + named + ", which cannot be the name of a file");
    }
  }

  /**
   * Reads the log and tells of lines that are damaged.
   *
   * @return all that the log holds
   * @throws IOException if the log cannot be read
   */
  public History read() throws IOException {
    return read(log());
  }

  /**
   * Reads another log and tells of lines that are damaged.
   *
   * @param log the log
   * @return all that it holds
   * @throws IOException if it cannot be read
   */
  public History read(PracticeLog log) throws IOException {
    History history = log.read();
    PrintWriter err = command.commandLine().getErr();
    history.damaged().stream().limit(MOST_TOLD).forEach(line -> tell(log, line, err));
    if (history.damaged().size() > MOST_TOLD) {
      err.println("matraloom: and " + (history.damaged().size() - MOST_TOLD) + " lines more");
    }
    if (!history.damaged().isEmpty()) {
      err.println("To set such lines aside in a file of their own: " + typed("--mend", log));
    }
    return history;
  }

  private static void tell(PracticeLog log, DamagedLine line, PrintWriter err) {
    err.println(
        "matraloom: "
            + log.file()
            + ", line "
            + line.number()
            + " ("
            + line.bytes()
            + " bytes) is skipped: "
            + line.reason());
  }
}
