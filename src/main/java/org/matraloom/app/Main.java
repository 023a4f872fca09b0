package org.matraloom.app;

import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.matraloom.app.cli.CommandLines;
import org.matraloom.app.cli.ExitCode;
import picocli.CommandLine;

/**
 * The program's entry: hands the arguments to a command and ends with its exit code.
 *
 * <p>Java looks up every class that a public method here names before it starts the program, so
 * none names one that a short command does not need.
 */
public final class Main {

  /** What the program is called. */
  static final String NAME = "matraloom";

  private Main() {}

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
    if (fault.isPresent()) {
      err.println("matraloom: the answer could not be written: " + fault.get());
    }
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
      CommandLine line = Commands.lineFor(new AllCommands(), arguments);
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

  private static PrintWriter writer(OutputStream stream) {
    return new PrintWriter(
        new TerminalWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8)), true);
  }
}
