package org.matraloom.app.prove;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.fit.WholeRange;
import org.matraloom.kanakku.BothLandings;
import org.matraloom.kanakku.FalseClaim;
import org.matraloom.kanakku.Landing;
import org.matraloom.kanakku.ScoreFindings;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.TwoReciters;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Proves or refutes that a score lands. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = {
      "Prove that a score lands, with its sums; exit code 1 if it misses.",
      "Of a folder: a line for every score in it."
    },
    footer = {"", "Example: matraloom check samples-synth/gutter-song.loom"})
public final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(
      names = "--tala",
      paramLabel = "TALA",
      description = "In this tala: of a folder, only such scores.")
  private String tala;

  @Option(
      names = "--matras",
      paramLabel = "RANGE",
      description =
          "So many matras: of a folder, only scores with such a first round, such as 70..90.")
  private WholeRange matras;

  @Mixin private CatalogueOptions catalogue;

  @Option(names = "--json", description = "Write JSON.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    if (Files.isDirectory(score.file())) {
      String ofOne = "name one score and not a folder";
      AskedOptions.refuse(command, ofOne, "--tempo", "--slow", "--reciter");
      CatalogueFilter filter = catalogue.filter(Optional.ofNullable(tala), matras);
      return Catalogue.read(score.file(), filter, score.lexicon())
          .print(command.commandLine().getOut(), false, json);
    }
    String ofFolders = "this searches in a folder of scores";
    AskedOptions.refuse(command, ofFolders, "--tala", "--matras", "--nadai", "--yati");
    return prove(score.readAll(), json, command.commandLine().getOut());
  }

  /**
   * The check of one score with no options.
   *
   * @param file the score
   * @param out where the proof goes
   * @param err where problems of the score go
   * @return the exit code
   * @throws IOException if the proof cannot be written
   */
  public static int prove(Path file, PrintWriter out, PrintWriter err) throws IOException {
    return prove(ScoreOptions.read(file, Lexicon.standard(), err), false, out);
  }

  private static int prove(Composition composition, boolean json, PrintWriter out)
      throws IOException {
    if (TwoReciters.in(composition)) {
      BothLandings both = BothLandings.of(TwoReciters.of(composition));
      if (json) {
        SideBySideJson.write(both, out);
      } else {
        new SideBySideText(both).print(out);
      }
      return both.holds() ? ExitCode.DONE : ExitCode.CHECK_FAILED;
    }
    Performance performance = Performance.of(composition);
    Landing landing = Landing.of(performance);
    if (json) {
      LandingJson.write(landing, out);
    } else {
      new LandingText(landing).print(out);
    }
    boolean claimsHold =
        FalseClaim.in(performance).isEmpty() && ScoreFindings.placesHold(performance);
    return landing.lands() && claimsHold ? ExitCode.DONE : ExitCode.CHECK_FAILED;
  }
}
