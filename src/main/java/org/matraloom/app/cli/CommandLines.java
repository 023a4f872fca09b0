package org.matraloom.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import org.matraloom.fit.WholeRange;
import org.matraloom.sound.MixPart;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Gives a command line what every command needs: writers, converters, explanations. */
public final class CommandLines {

  private CommandLines() {}

  /**
   * Prepares a command line.
   *
   * @param line the command line
   * @param out where results go
   * @param err where problems and progress go
   * @return the same command line
   */
  public static CommandLine prepared(CommandLine line, PrintWriter out, PrintWriter err) {
    line.setOut(out);
    line.setErr(err);
    line.registerConverter(MixPart.class, new PartName());
    line.registerConverter(ExactNumber.class, new ExactNumber.Converter());
    line.registerConverter(NadaiNumber.class, new NadaiNumber.Converter());
    line.registerConverter(WholeRange.class, new WholeRangeOption());
    PlainNumbers.register(line);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler((error, arguments) -> explainUsage(error));
    line.setExecutionExceptionHandler((error, command, parsed) -> explain(error, command.getErr()));
    return line;
  }

  /**
   * Explains a mistake in the use of a command.
   *
   * @param error what the reading of the command line says
   * @return the exit code
   */
  public static int explainUsage(ParameterException error) {
    CommandLine command = error.getCommandLine();
    PrintWriter err = command.getErr();
    err.println("matraloom: " + UsageWords.of(error));
    CommandLine.UnmatchedArgumentException.printSuggestions(error, err);
    err.println("Try: " + command.getCommandSpec().qualifiedName() + " --help");
    return ExitCode.BAD_INPUT;
  }

  /**
   * Explains what kept a command from being done.
   *
   * @param error what was thrown
   * @param err where the explanation goes
   * @return the exit code
   */
  public static int explain(Throwable error, PrintWriter err) {
    if (error instanceof UserError) {
      if (!error.getMessage().isEmpty()) {
        err.println("matraloom: " + error.getMessage());
      }
      return ExitCode.BAD_INPUT;
    } else if (error instanceof UncheckedIOException wrapped) {
      return explain(wrapped.getCause(), err);
    } else if (error instanceof IOException problem) {
      err.println("matraloom: " + MachineWords.of(problem));
      return ExitCode.MACHINE;
    } else if (error instanceof OutOfMemoryError) {
      err.println("matraloom: this needs more memory than Java was given");
      return ExitCode.MACHINE;
    }
    StackTraceElement where = error.getStackTrace().length == 0 ? null : error.getStackTrace()[0];
    err.println(
        "matraloom: a fault in the program itself, please report it: " + error + " at " + where);
    return ExitCode.MACHINE;
  }
}
