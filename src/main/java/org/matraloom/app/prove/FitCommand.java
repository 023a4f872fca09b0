package org.matraloom.app.prove;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.OneTala;
import org.matraloom.fit.WholeRange;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Finds what lands: from numbers, from a sum, for a score, for a folder of scores. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Find everything that lands, each answer tried out.",
      "Without a score: every length, start, rest or nadai for some rounds.",
      "For a score or a sum such as \"14 + 5(2)5(2)5\": every way to make it land.",
      "Exit code 1 if nothing lands."
    },
    footer = {
      "",
      "Example: matraloom fit --tala adi --rounds 4-4-5 --matras 70..90",
      "  matraloom fit --rounds \"4-4-(?n5)-5\" --matras 64",
      "  matraloom fit \"14 + 5(2)5(2)5\" --start \"1 matra late\"",
      "  matraloom fit samples-synth/leaking-boat.loom --apply 1 -o mended.loom"
    })
public final class FitCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(
      arity = "0..*",
      paramLabel = "SCORE",
      description = "A .loom file, a folder of them, or a sum; none to fit numbers.")
  private List<String> pieces = List.of();

  @Mixin private SettingOptions setting;

  @Option(
      names = "--rounds",
      paramLabel = "PLAN",
      description = {
        "The rounds: 4-4-5; 4x2-5; 4k2 is kalam 2; ? is any nadai;",
        "a rest in brackets: (7), (16n5), (2 beats), (?)."
      })
  private String rounds;

  @Option(
      names = "--matras",
      paramLabel = "RANGE",
      description = "The lengths to try, such as 80 or 70..90 (default 3..200).")
  private WholeRange matras;

  @Option(
      names = {"--rest", "--wait"},
      paramLabel = "RANGE",
      defaultValue = "0..64",
      description = "The lengths to try for a rest (?), in matras (default ${DEFAULT-VALUE}).")
  private WholeRange wait;

  @Mixin private CatalogueOptions catalogue;

  @Mixin private RepairOptions repair;

  @Mixin private LexiconOptions sollus;

  @Option(names = "--json", description = "Write JSON.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    String piece = String.join(" ", pieces).strip();
    if (piece.isEmpty()) {
      repair.refuseApply();
      FitQuestion question = new FitQuestion(setting, rounds, matras, wait);
      return new FitReport(question.problem(), repair).print(command, json);
    }
    Path path = path(piece);
    if (Files.isDirectory(path)) {
      Catalogue found =
          Catalogue.read(path, catalogue.filter(setting.namedTala(), matras), sollus.lexicon());
      return found.print(command.commandLine().getOut(), true, json);
    }
    boolean isFile = Files.exists(path) || piece.endsWith(".loom");
    WrittenPiece written =
        isFile
            ? WrittenPiece.read(path, sollus.lexicon(), command)
            : WrittenPiece.sum(piece, setting, rounds, sollus.lexicon(), command);
    OneTala.of(written.composition(), "fit");
    return new RepairReport(written, repair).print(command, json);
  }

  private static Path path(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException notAPath) {
      return Path.of("");
    }
  }
}
