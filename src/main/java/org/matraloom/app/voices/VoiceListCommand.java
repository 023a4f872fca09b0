package org.matraloom.app.voices;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.UserError;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists the voices that are kept. */
@Command(
    name = "list",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "List the recorded voices, with their owners and terms.",
    footer = {"", "Example: matraloom voice list"})
final class VoiceListCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private ShelfOptions shelf;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    List<String> names = shelf.shelf().names();
    if (names.isEmpty()) {
      out.println("No voice has been recorded; see matraloom voice make --help.");
    }
    for (String name : names) {
      try {
        new KitTable(shelf.open(name)).printSum(out);
      } catch (UserError broken) {
        command.commandLine().getErr().println(name + " cannot be read: " + broken.getMessage());
      }
    }
    return ExitCode.DONE;
  }
}
