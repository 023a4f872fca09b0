package org.matraloom.app.voices;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.SheetOutput;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.mouth.Kit;
import org.matraloom.mouth.KitZip;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a voice as one file. */
@Command(
    name = "share",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Write a voice as one file to hand on, with its owner's name and terms.",
      "Who gets it makes a voice of it with voice make NAME FILE.zip, and hears it."
    },
    footer = {"", "Example: matraloom voice share river -o river.zip"})
final class VoiceShareCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(index = "0", paramLabel = "NAME", description = "The voice.")
  private String name;

  @Option(
      names = {"-o", "--output"},
      required = true,
      paramLabel = "OUT.zip",
      description = "The file to write; an older one is replaced.")
  private Path output;

  @Mixin private ShelfOptions shelf;

  @Override
  public Integer call() throws IOException {
    if (!SheetOutput.endingOf(output).equals("zip")) {
      throw new UserError(output + ": a voice is shared as .zip");
    }
    Kit kit = shelf.open(name);
    if (kit.head().owner().isEmpty() || kit.head().consent().isEmpty()) {
      throw new UserError(
          "the voice "
              + name
              + " names no "
              + (kit.head().owner().isEmpty() ? "owner" : "consent")
              + "; write it into voice.txt in "
              + shelf.shelf().folderOf(name)
              + " before you share it");
    }
    WholeFile.write(output, out -> KitZip.write(kit, shelf.shelf().folderOf(name), out));
    command.commandLine().getOut().println(output + ": whoever gets it hears this voice");
    return ExitCode.DONE;
  }
}
