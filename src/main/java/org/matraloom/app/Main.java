package org.matraloom.app;

import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.matraloom.app.cli.CommandLines;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Program;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program's entry: hands the arguments to a command and ends with its exit code. */
@Command(
    name = Main.NAME,
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    sortOptions = false,
    description = {
      "Write a konnakkol composition as text, prove that it lands, and practise it.",
      "",
      "Start with: matraloom open    (everything on one page, in the browser)",
      "Or with:    matraloom demo    (every command on one piece)"
    },
    footer = {
      "",
      "Exit codes: 0 done; 1 the score or take fails its check; 2 bad input or usage;",
      "3 the machine could not.",
      "Keep the level low and rest your voice; these are general cautions, not medical advice."
    })
public final class Main implements Program {

  /** What the program is called. */
  static final String NAME = "matraloom";

  /** Keeps picocli's factory happy; the class has no state. */
  Main() {}

  /**
   * Runs the program and ends the process.
   *
   * @param arguments the command line
   */
  public static void main(String[] arguments) {
    AnswerStream answers = new AnswerStream();
    PrintWriter out = writer(answers);
    PrintWriter err = new PrintWriter(new ErrorLines(writer(System.err)), true);
    int code = run(out, err, arguments);
    out.flush();
    Optional<String> fault = answers.fault();
    fault.ifPresent(words -> err.println("matraloom: the answer could not be written: " + words));
    err.flush();
    System.exit(fault.isPresent() ? ExitCode.MACHINE : code);
  }

  /**
   * Runs one command line without ending the process.
   *
   * @param out where results go
   * @param err where problems and progress go
   * @param arguments the command line
   * @return the exit code: see {@link ExitCode}
   */
  public static int run(PrintWriter out, PrintWriter err, String... arguments) {
    try {
      if (PlainLine.is(arguments)) {
        return PlainLine.run(out, err, arguments);
      }
      CommandLine line = Commands.lineFor(new Main(), arguments);
      CommandLines.prepared(line, out, err);
      if (arguments.length == 0) {
        line.usage(out);
        return ExitCode.DONE;
      }
      return line.execute(arguments);
    } catch (VirtualMachineError tooMuch) {
      return CommandLines.explain(tooMuch, err);
    }
  }

  @Override
  public int runAlso(PrintWriter out, PrintWriter err, String... arguments) {
    return run(out, err, arguments);
  }

  @Override
  public CommandLine whole() {
    return Commands.lineFor(new Main());
  }

  private static PrintWriter writer(OutputStream stream) {
    return new PrintWriter(
        new TerminalWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8)), true);
  }
}
