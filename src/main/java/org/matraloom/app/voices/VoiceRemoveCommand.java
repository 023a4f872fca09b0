package org.matraloom.app.voices;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.UserError;
import org.matraloom.mouth.KitException;
import org.matraloom.prompt.RowFolder;
import org.matraloom.score.Lexicon;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Removes a voice. */
@Command(
    name = "remove",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Remove a voice from this machine, with all its samples,",
      "and the rows that were recorded for it."
    },
    footer = {"", "Example: matraloom voice remove river"})
final class VoiceRemoveCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(index = "0", paramLabel = "NAME", description = "The voice.")
  private String name;

  @Mixin private ShelfOptions shelf;

  @Override
  public Integer call() throws IOException {
    ShelfOptions.requireName(name);
    RowFolder rows = new RowFolder(shelf.rows(name), Lexicon.standard());
    try {
      if (shelf.shelf().has(name) || !rows.isBegun()) {
        shelf.shelf().remove(name);
      }
      rows.remove();
    } catch (KitException absent) {
      throw new UserError(absent.getMessage());
    }
    command.commandLine().getOut().println(name + " is removed");
    return ExitCode.DONE;
  }
}
