package org.matraloom.app;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.kanakku.Reduction;
import org.matraloom.kanakku.Yati;
import org.matraloom.kanakku.YatiProposals;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Proposes lines of a wished shape or reduction. */
@Command(
    name = "propose",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Propose lines of a wished yati that come to a wished sum,",
      "or a phrase whose sollus are held shorter from line to line."
    },
    footer = {
      "",
      "Example: matraloom propose --yati gopuccha --matras 70 --lines 4",
      "  matraloom propose --reduce 5 --from 6 --to 2"
    })
final class ProposeCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Option(
      names = "--yati",
      paramLabel = "SHAPE",
      description = "The shape: ${COMPLETION-CANDIDATES}.")
  private Yati yati;

  @Option(names = "--matras", paramLabel = "N", description = "What the lines come to.")
  private int matras;

  @Option(
      names = "--lines",
      paramLabel = "N",
      defaultValue = "4",
      description = "How many lines (default ${DEFAULT-VALUE}).")
  private int count;

  @Option(
      names = "--reduce",
      paramLabel = "SOLLUS",
      description = "How many sollus the phrase has that is held shorter and shorter.")
  private Integer sollus;

  @Option(
      names = "--from",
      paramLabel = "N",
      defaultValue = "6",
      description = "The hold of the first line, in matras (default ${DEFAULT-VALUE}).")
  private int longest;

  @Option(
      names = "--to",
      paramLabel = "N",
      defaultValue = "2",
      description = "The hold of the last line, in matras (default ${DEFAULT-VALUE}).")
  private int shortest;

  @Override
  public Integer call() {
    PrintWriter out = command.commandLine().getOut();
    try {
      if (yati != null) {
        return lines(out);
      } else if (sollus != null) {
        for (Reduction way : Reduction.all(sollus, longest, shortest)) {
          out.printf("%-24s %s%n", way.written(), LineWords.summed(way.lines()));
        }
        return ExitCode.DONE;
      }
    } catch (IllegalArgumentException outOfRange) {
      throw new UserError(outOfRange.getMessage());
    }
    throw new UserError("say --yati and --matras, or --reduce and a number of sollus");
  }

  private int lines(PrintWriter out) {
    List<List<Integer>> proposals = YatiProposals.lines(yati, matras, count);
    for (List<Integer> lines : proposals) {
      out.println(LineWords.summed(lines) + ": " + LineWords.shape(lines));
    }
    if (proposals.isEmpty()) {
      out.println("No " + count + " lines of whole matras in this shape come to " + matras + ".");
      return ExitCode.CHECK_FAILED;
    }
    return ExitCode.DONE;
  }
}
