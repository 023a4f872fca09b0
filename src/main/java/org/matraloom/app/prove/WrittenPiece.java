package org.matraloom.app.prove;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.matraloom.app.cli.ReciterOption;
import org.matraloom.app.cli.UserError;
import org.matraloom.fit.RoundPlan;
import org.matraloom.notation.Problem;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.time.Ratio;
import picocli.CommandLine.Model.CommandSpec;

/**
 * A score together with its text.
 *
 * @param path its file; for a sum the name under which problems are told
 * @param text the whole text
 * @param composition what it says
 * @param lexicon the sollus that it was read with
 */
record WrittenPiece(Path path, String text, Composition composition, Lexicon lexicon) {

  private static final String SUM = "sum";
  private static final String TERMS = "Sum = ";

  /** Reads a file and prints its problems. */
  static WrittenPiece read(Path file, Lexicon lexicon, CommandSpec command) throws IOException {
    Composition composition =
        ReciterOption.requireOne(
            composition(ScoreReader.read(file, lexicon), command), command.name());
    String text = Files.readString(file, StandardCharsets.UTF_8);
    return new WrittenPiece(file, text, composition, lexicon);
  }

  /** Makes a score of a sum such as {@code 14 + 5(2)5(2)5}. */
  static WrittenPiece sum(
      String typed, SettingOptions setting, String rounds, Lexicon lexicon, CommandSpec command) {
    PaperSum sum = PaperSum.of(typed);
    List<RoundPlan> plans = FitQuestion.plans(rounds == null ? sum.rounds().orElse("4") : rounds);
    if (plans.size() != 1 || plans.get(0).hasOpenWait()) {
      throw new UserError("the rounds of a sum must be plain, such as --as 4-4-5");
    }
    RoundPlan.Part.Round first = plans.get(0).rounds().get(0);
    int density = first.nadai() * Composition.density(first.kalam());
    sum.tala().ifPresent(setting::inTala);
    sum.start().ifPresent(setting::startAt);
    setting.read(density);
    StringBuilder text = new StringBuilder(setting.head(density));
    text.append('\n').append(TERMS).append(sum.terms()).append("\n\nperform\n");
    for (RoundPlan.Part part : plans.get(0).parts()) {
      if (part instanceof RoundPlan.Part.Round round) {
        text.append("  Sum nadai ").append(round.nadai()).append(" kalam ").append(round.kalam());
      } else if (part instanceof RoundPlan.Part.Wait wait) {
        text.append("  rest ").append(wait.beats().toMixed()).append(" beats");
      }
      text.append('\n');
    }
    String score = text.toString();
    Reading reading = ScoreReader.read(score, SUM, lexicon);
    List<Problem> problems =
        reading.problems().stream().map(p -> sum.asTyped(p, TERMS.length())).toList();
    Composition piece = composition(new Reading(reading.composition(), problems), command);
    check(sum, piece, density);
    return new WrittenPiece(Path.of(SUM), score, piece, lexicon);
  }

  private static void check(PaperSum sum, Composition piece, int density) {
    try {
      sum.check(
          Performance.of(piece).rounds().get(0).matras(),
          Ratio.of(piece.avartana().beats()).times(density),
          piece.avartana().tala().name());
    } catch (IllegalArgumentException refused) {
      throw new UserError(refused.getMessage());
    }
  }

  boolean isSum() {
    return path.equals(Path.of(SUM));
  }

  private static Composition composition(Reading reading, CommandSpec command) {
    PrintWriter err = command.commandLine().getErr();
    reading.problems().forEach(problem -> err.println(problem.format()));
    return reading.composition().orElseThrow(UserError::alreadyTold);
  }
}
