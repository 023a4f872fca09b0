package org.matraloom.app;

import java.io.PrintWriter;
import org.matraloom.app.cli.Program;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program as its commands see it: what stands above all of them. */
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
final class AllCommands implements Program {

  /** Keeps picocli's factory happy; the class has no state. */
  AllCommands() {}

  @Override
  public int runAlso(PrintWriter out, PrintWriter err, String... arguments) {
    return Main.run(out, err, arguments);
  }

  @Override
  public CommandLine whole() {
    return Commands.lineFor(new AllCommands());
  }
}
