package org.matraloom.app.prove;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.UserError;
import org.matraloom.fit.WholeRange;
import org.matraloom.form.KoraippuTurn;
import org.matraloom.form.Yati;
import org.matraloom.form.YatiProposals;
import org.matraloom.kanakku.LengthWords;
import org.matraloom.time.Ratio;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Proposes lines of a wished shape, reductions of a phrase, turns of a koraippu. */
@Command(
    name = "propose",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Propose lines of a wished yati and sum, a reduction, or the turns of a koraippu.",
      "A reduction is held shorter, or loses sollus, from line to line.",
      "Turns are listed with the gap that each leaves."
    },
    footer = {
      "",
      "Example: matraloom propose --yati gopuccha --matras 70 --lines 4",
      "  matraloom propose --reduce tadiginatom --from 6 --to 2",
      "  matraloom propose --turn 32 --group 7"
    })
public final class ProposeCommand implements Callable<Integer> {

  private static final int A_SCREENFUL = 18;
  private static final int MOST = 10_000;

  @Spec private CommandSpec command;

  @Option(
      names = "--yati",
      paramLabel = "SHAPE",
      description = "Of this shape. " + CatalogueOptions.SHAPES)
  private Yati yati;

  @Option(
      names = "--matras",
      paramLabel = "RANGE",
      description = "So many matras: what the lines come to, such as 70 or 60..80.")
  private WholeRange matras;

  @Option(
      names = "--lines",
      paramLabel = "N",
      defaultValue = "4",
      description = "How many lines (default ${DEFAULT-VALUE}).")
  private int count;

  @Mixin private ReductionOptions reduction;

  @Option(names = "--turn", paramLabel = "N", description = "The matras of the first turn.")
  private Integer turn;

  @Option(
      names = "--group",
      paramLabel = "N",
      defaultValue = "7",
      description = "The matras of a group in a turn (default ${DEFAULT-VALUE}).")
  private int group;

  @Option(names = "--all", description = "List everything, not only a screenful; at most 10,000.")
  private boolean all;

  @Option(names = "--json", description = "Write JSON.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    try {
      if (yati != null) {
        return lines(out);
      } else if (reduction.isAsked()) {
        if (json) {
          ProposalJson.write(reduction, out);
        } else {
          reduction.print(out);
        }
        return ExitCode.DONE;
      } else if (turn != null) {
        return turns(out);
      }
    } catch (IllegalArgumentException outOfRange) {
      throw new UserError(outOfRange.getMessage());
    }
    throw new UserError("say --yati and --matras, or --reduce and a word, or --turn and --group");
  }

  private int lines(PrintWriter out) throws IOException {
    if (matras == null) {
      throw new UserError("--yati needs --matras, a number such as 70 or a range such as 60..80");
    }
    int most = all ? MOST : A_SCREENFUL;
    List<List<Integer>> proposals = new ArrayList<>();
    for (int sum = matras.low(); sum <= matras.high() && proposals.size() <= most; sum++) {
      proposals.addAll(YatiProposals.lines(yati, sum, count, most + 1 - proposals.size()));
    }
    List<List<Integer>> shown = proposals.subList(0, Math.min(most, proposals.size()));
    if (json) {
      ProposalJson.write(shown, proposals.size() > most, out);
      return proposals.isEmpty() ? ExitCode.CHECK_FAILED : ExitCode.DONE;
    }
    shown.forEach(lines -> out.println(LineWords.told(lines)));
    if (proposals.isEmpty()) {
      out.println(
          "No "
              + count
              + " lines of whole matras in this shape come to "
              + matras.low()
              + (matras.low() == matras.high() ? "" : " to " + matras.high())
              + ".");
      return ExitCode.CHECK_FAILED;
    } else if (proposals.size() > most) {
      out.println(all ? "... and more." : "... and more; --all lists them.");
    }
    return ExitCode.DONE;
  }

  private int turns(PrintWriter out) throws IOException {
    List<KoraippuTurn> turns = KoraippuTurn.halving(turn, group);
    if (json) {
      ProposalJson.writeTurns(turns, out);
      return turns.isEmpty() ? ExitCode.CHECK_FAILED : ExitCode.DONE;
    }
    for (KoraippuTurn each : turns) {
      out.printf(
          "%d = %d x %d + %d: gap of %d%n",
          each.matras(), each.groups(), group, each.gapMatras(), each.gapMatras());
    }
    if (turns.isEmpty()) {
      out.printf(
          "No group of %d goes into a turn of %s; give a longer --turn%nor a shorter --group.%n",
          group, LengthWords.matras(Ratio.of(turn)));
      return ExitCode.CHECK_FAILED;
    }
    return ExitCode.DONE;
  }
}
