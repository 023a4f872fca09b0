package org.matraloom.app;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Program;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes what a package of the program holds beside it, from the commands as they are. */
@Command(
    name = "packaging",
    hidden = true,
    description = "Write the manual page or the completions of the shell.")
final class PackagingCommand implements Callable<Integer> {

  /** What can be written. */
  private enum Part {
    MAN,
    BASH
  }

  @Spec private CommandSpec command;

  @Parameters(paramLabel = "PART", description = "One of ${COMPLETION-CANDIDATES}.")
  private Part part;

  @Override
  public Integer call() {
    CommandLine all = ((Program) command.root().userObject()).whole();
    PrintWriter out = command.commandLine().getOut();
    if (part == Part.BASH) {
      out.print(AutoComplete.bash(all.getCommandName(), all));
    } else {
      writeManual(all, out);
    }
    return ExitCode.DONE;
  }

  /** A page for man(7): the help of the program, then that of each command as it stands. */
  private static void writeManual(CommandLine all, PrintWriter out) {
    out.println(".TH MATRALOOM 1 \"\" \"" + ProgramVersion.line() + "\"");
    out.println(".SH NAME");
    out.println("matraloom \\- practise konnakkol compositions");
    section("DESCRIPTION", all, out);
    all.getSubcommands()
        .forEach(
            (name, each) -> {
              if (!each.getCommandSpec().usageMessage().hidden()) {
                section(name.toUpperCase(Locale.ROOT), each, out);
              }
            });
  }

  private static void section(String title, CommandLine line, PrintWriter out) {
    out.println(".SH " + title);
    out.println(".nf");
    String usage = line.getUsageMessage(CommandLine.Help.Ansi.OFF);
    usage.lines().map(PackagingCommand::verbatim).forEach(out::println);
    out.println(".fi");
  }

  /** A line in which nothing is an order to the typesetter. */
  private static String verbatim(String line) {
    String safe = line.replace("\\", "\\e").replace("-", "\\-");
    return safe.startsWith(".") || safe.startsWith("'") ? "\\&" + safe : safe;
  }
}
