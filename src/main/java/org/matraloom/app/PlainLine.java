package org.matraloom.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.matraloom.app.cli.CommandLines;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.prove.CheckCommand;

/**
 * Command lines in which nothing is to be read: the version, and the check of one score.
 *
 * <p>To get ready for reading options takes twice as long as the check of a small score, which is
 * what is asked for most. The answers are those of the commands.
 */
final class PlainLine {

  private static final List<String> VERSION = List.of("--version", "-V");
  private static final String CHECK = "check";

  private PlainLine() {}

  /** Whether a command line is one of these; a folder, a list of arguments and the like are not. */
  static boolean is(String... arguments) {
    return isVersion(arguments)
        || (arguments.length == 2 && arguments[0].equals(CHECK) && isFile(arguments[1]));
  }

  /** Does what a command line asks for that is one of these. */
  static int run(PrintWriter out, PrintWriter err, String... arguments) {
    if (isVersion(arguments)) {
      out.println(ProgramVersion.line());
      return ExitCode.DONE;
    }
    try {
      return CheckCommand.prove(Path.of(arguments[1]), out, err);
    } catch (IOException | RuntimeException known) {
      return CommandLines.explain(known, err);
    }
  }

  private static boolean isVersion(String... arguments) {
    return arguments.length == 1 && VERSION.contains(arguments[0]);
  }

  private static boolean isFile(String word) {
    try {
      return !word.startsWith("-") && !word.startsWith("@") && Files.isRegularFile(Path.of(word));
    } catch (InvalidPathException noName) {
      return false;
    }
  }
}
