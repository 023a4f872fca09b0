package org.matraloom.app.prove;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.kanakku.BeatRow;
import org.matraloom.score.Composition;
import org.matraloom.score.Nadai;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Step;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows what falls on every kriya, as written and in another nadai. */
@Command(
    name = "rebar",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Cut a round by the beat: what is said on and after every kriya.",
      "With --nadai, the same round in another nadai beside it.",
      "A mark a matra: a sollu, [several in one], a comma that rings, a dot of silence, - outside the",
      "round."
    },
    footer = {"", "Example: matraloom rebar samples-synth/gutter-song.loom --nadai 5"})
public final class RebarCommand implements Callable<Integer> {

  private static final int A_SCREENFUL = 64;
  private static final int WIDEST = 34;

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(
      names = "--round",
      paramLabel = "N",
      defaultValue = "1",
      description = "Which round (default ${DEFAULT-VALUE}).")
  private int number;

  @Option(names = "--nadai", paramLabel = "N", description = "Another nadai to compare with.")
  private Integer nadai;

  @Option(names = "--all", description = "Show every beat, not only a screenful.")
  private boolean all;

  @Override
  public Integer call() {
    Composition piece = score.read();
    Performance performance = Performance.of(piece);
    List<Span.Round> rounds = performance.rounds();
    if (number < 1 || number > rounds.size()) {
      throw new UserError("--round is 1 to " + rounds.size() + ", given " + number);
    }
    PrintWriter out = command.commandLine().getOut();
    print(rounds.get(number - 1), performance, out);
    if (nadai != null) {
      if (nadai < 1 || nadai > Composition.HIGHEST_NADAI) {
        throw new UserError("--nadai is 1 to " + Composition.HIGHEST_NADAI + ", given " + nadai);
      }
      out.println();
      Span.Round round = rounds.get(number - 1);
      Composition other =
          new Composition(
              piece.title(),
              piece.avartana(),
              piece.tempo(),
              piece.avartana().placeOf(round.startBeat()),
              piece.eduppuBeat(),
              piece.phrases(),
              List.of(new Step.Say(round.phrase(), 1, nadai, round.kalam())));
      Performance alone = Performance.of(other);
      print(alone.rounds().get(0), alone, out);
    }
    return ExitCode.DONE;
  }

  private void print(Span.Round round, Performance performance, PrintWriter out) {
    out.println(
        round.phrase()
            + " in "
            + Nadai.inWords(round.nadai())
            + (round.kalam() == 1 ? "" : ", kalam " + round.kalam())
            + ": "
            + round.matras().toMixed()
            + " matras, "
            + round.beats().toMixed()
            + " beats");
    List<BeatRow> rows = BeatRow.of(round, performance);
    int shown = all ? rows.size() : Math.min(A_SCREENFUL, rows.size());
    for (BeatRow row : rows.subList(0, shown)) {
      long beat =
          Math.floorMod(row.beat(), (long) performance.composition().avartana().beats()) + 1;
      String line =
          String.format(
              "%s %3d %-14s %-" + WIDEST + "s %s",
              row.samam() ? "||" : "  ",
              beat,
              row.kriya().words(),
              String.join(" ", row.marks()),
              onTheBeat(row));
      out.println(line.stripTrailing());
    }
    if (shown < rows.size()) {
      out.println("... and " + (rows.size() - shown) + " more beats; --all shows them.");
    }
  }

  private static String onTheBeat(BeatRow row) {
    if (row.onTheBeat().isEmpty()) {
      return "silent on the beat";
    }
    String sollu = row.onTheBeat().get().spelling();
    return row.begins() ? "" : sollu + " rings over the beat";
  }
}
