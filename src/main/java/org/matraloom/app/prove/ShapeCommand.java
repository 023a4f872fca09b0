package org.matraloom.app.prove;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Json;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.UserError;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Names the shape of lines, and shows the lines of a score. */
@Command(
    name = "shape",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {"Name the yati of lines, or show the lines of a score with their sums."},
    footer = {
      "",
      "Example: matraloom shape 28 21 14 7",
      "  matraloom shape samples-synth/monsoon-ledger.loom"
    })
public final class ShapeCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(
      arity = "0..*",
      paramLabel = "LINES",
      description = "The lengths of lines in matras, or a .loom file.")
  private List<String> lines = List.of();

  @Option(names = "--json", description = "Write JSON.")
  private boolean json;

  @Mixin private LexiconOptions sollus;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    if (lines.isEmpty()) {
      throw new UserError("give the lengths of lines, such as 28 21 14 7, or a .loom file");
    }
    if (lines.size() == 1 && lines.get(0).endsWith(".loom")) {
      WrittenPiece piece = WrittenPiece.read(Path.of(lines.get(0)), sollus.lexicon(), command);
      StructureText text = new StructureText(piece.composition());
      if (json) {
        StructureJson.write(text.structures(), out);
      } else {
        text.print(out);
      }
      return ExitCode.DONE;
    }
    try {
      List<Integer> lengths = lines.stream().map(Integer::valueOf).toList();
      if (lengths.stream().anyMatch(length -> length < 1)) {
        throw new UserError("a line has at least 1 matra, given " + String.join(" ", lines));
      }
      if (json) {
        try (Json written = Json.to(out)) {
          written.generator().writeStartObject();
          LineWords.write(lengths, written.generator());
          written.generator().writeEndObject();
        }
      } else {
        out.println(LineWords.told(lengths));
      }
    } catch (NumberFormatException notANumber) {
      throw new UserError("lines are whole numbers of matras, given " + String.join(" ", lines));
    }
    return ExitCode.DONE;
  }
}
