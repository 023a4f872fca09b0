package org.matraloom.app;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import org.matraloom.kanakku.WholeRange;
import org.matraloom.sound.Part;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;

/** The program's entry: hands the arguments to a command and ends with its exit code. */
@Command(
    name = "matraloom",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    sortOptions = false,
    description = {
      "Write a konnakkol composition as text, prove that it lands, and practise it.",
      "",
      "Start with: matraloom demo"
    },
    footer = {
      "",
      "Exit codes: 0 done; 1 the score or take fails its check; 2 bad input or usage;",
      "3 the machine could not.",
      "Keep the level low and rest your voice; these are general cautions, not medical advice."
    })
public final class Main {

  /** Keeps picocli's factory happy; the class has no state. */
  Main() {}

  /**
   * Runs the program and ends the process.
   *
   * @param arguments the command line
   */
  public static void main(String[] arguments) {
    PrintWriter out = writer(System.out);
    PrintWriter err = writer(System.err);
    int code = run(out, err, arguments);
    out.flush();
    err.flush();
    System.exit(code);
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
    CommandLine line = prepared(Commands.line(arguments), out, err);
    if (arguments.length == 0) {
      line.usage(out);
      return ExitCode.DONE;
    }
    return line.execute(arguments);
  }

  /** Gives a command line what every command needs: writers, converters, explanations. */
  static CommandLine prepared(CommandLine line, PrintWriter out, PrintWriter err) {
    line.setOut(out);
    line.setErr(err);
    line.registerConverter(Part.class, new PartName());
    line.registerConverter(ExactNumber.class, new ExactNumber.Converter());
    line.registerConverter(WholeRange.class, new WholeRangeOption());
    PlainNumbers.register(line);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(Main::explainUsage);
    line.setExecutionExceptionHandler((error, command, parsed) -> explain(error, command));
    return line;
  }

  private static int explainUsage(ParameterException error, String[] arguments) {
    CommandLine command = error.getCommandLine();
    PrintWriter err = command.getErr();
    err.println("matraloom: " + UsageWords.of(error));
    CommandLine.UnmatchedArgumentException.printSuggestions(error, err);
    err.println("Try: " + command.getCommandSpec().qualifiedName() + " --help");
    return ExitCode.BAD_INPUT;
  }

  private static int explain(Exception error, CommandLine command) {
    PrintWriter err = command.getErr();
    if (error instanceof UserError) {
      if (!error.getMessage().isEmpty()) {
        err.println("matraloom: " + error.getMessage());
      }
      return ExitCode.BAD_INPUT;
    } else if (error instanceof FileSystemException problem) {
      err.println("matraloom: " + FileTrouble.explain(problem));
      return ExitCode.MACHINE;
    } else if (error instanceof IOException) {
      err.println("matraloom: " + error.getMessage());
      return ExitCode.MACHINE;
    }
    StackTraceElement where = error.getStackTrace().length == 0 ? null : error.getStackTrace()[0];
    err.println(
        "matraloom: a fault in the program itself, please report it: " + error + " at " + where);
    return ExitCode.MACHINE;
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }
}
