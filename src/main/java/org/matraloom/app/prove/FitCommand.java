package org.matraloom.app.prove;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.UserError;
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
      "Example: matraloom fit --tala adi --as 4-4-5 --matras 70..90",
      "  matraloom fit --as \"4-4-(?n5)-5\" --matras 64",
      "  matraloom fit \"14 + 5(2)5(2)5\" --start \"1 matra late\"",
      "  matraloom fit samples-synth/leaking-boat.loom --apply 1 -o mended.loom"
    })
public final class FitCommand implements Callable<Integer> {

  private static final String EARLIER_NAME = "--rounds";
  private static final String[] OF_NUMBERS = {
    "--as", EARLIER_NAME, "--kalai", "--start", "--eduppu", "--rest"
  };
  private static final String[] OF_FOLDERS = {"--nadai", "--yati"};

  @Spec private CommandSpec command;

  @Parameters(
      arity = "0..*",
      paramLabel = "SCORE",
      description = "A .loom file, a folder of them, or a sum; none to fit numbers.")
  private List<String> pieces = List.of();

  @Mixin private SettingOptions setting;

  @Option(
      names = "--as",
      paramLabel = "PLAN",
      description = {
        "How it is said: 4-4-5; 4x2-5; 4k2 is kalam 2; ? is any nadai;",
        "a rest in brackets: (7), (16n5), (2 beats), (?)."
      })
  private String plan;

  @Option(
      names = EARLIER_NAME,
      hidden = true,
      paramLabel = "PLAN",
      description = "The earlier name of --as; elsewhere it chooses rounds of a score.")
  private String earlier;

  @Option(
      names = "--matras",
      paramLabel = "RANGE",
      description = "So many matras: the lengths to try, such as 80 or 70..90 (default 3..200).")
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
      AskedOptions.refuse(command, "this searches in a folder of scores", OF_FOLDERS);
      FitQuestion question = new FitQuestion(setting, plan(), matras, wait);
      return new FitReport(question.problem(), repair).print(command, json);
    }
    Path path = path(piece);
    if (Files.isDirectory(path)) {
      AskedOptions.refuse(command, "each score of the folder says this itself", OF_NUMBERS);
      AskedOptions.refuse(command, "name one score and not a folder", "--apply", "--output");
      Catalogue found =
          Catalogue.read(path, catalogue.filter(setting.namedTala(), matras), sollus.lexicon());
      return found.print(command.commandLine().getOut(), true, json);
    }
    boolean isFile = Files.exists(path) || piece.endsWith(".loom");
    AskedOptions.refuse(command, "this searches in a folder of scores", OF_FOLDERS);
    if (isFile) {
      String said = "the score says this itself; see convert for another tala or nadai";
      AskedOptions.refuse(command, said, OF_NUMBERS);
      AskedOptions.refuse(command, said, "--tala", "--matras");
    } else {
      AskedOptions.refuse(command, "the sum says this itself", "--matras", "--rest");
    }
    WrittenPiece written =
        isFile
            ? WrittenPiece.read(path, sollus.lexicon(), command)
            : WrittenPiece.sum(piece, setting, plan(), sollus.lexicon(), command);
    OneTala.of(written.composition(), "fit");
    return new RepairReport(written, repair).print(command, json);
  }

  private String plan() {
    if (plan != null && earlier != null) {
      throw new UserError("--as and " + EARLIER_NAME + " are one option; give it once");
    }
    return plan == null ? earlier : plan;
  }

  private static Path path(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException notAPath) {
      return Path.of("");
    }
  }
}
