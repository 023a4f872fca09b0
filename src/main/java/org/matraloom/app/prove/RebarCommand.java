package org.matraloom.app.prove;

import java.io.PrintWriter;
import java.util.ArrayList;
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
  private static final int WIDEST = 30;
  private static final int COLUMNS = 80;
  private static final String BESIDE = "   ";

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
    int widest =
        rows.subList(0, shown).stream()
            .map(row -> String.join(" ", row.marks()))
            .mapToInt(String::length)
            .filter(width -> width <= WIDEST)
            .max()
            .orElse(0);
    for (BeatRow row : rows.subList(0, shown)) {
      print(row, performance.composition().avartana().beats(), widest, out);
    }
    if (shown < rows.size()) {
      out.println("... and " + (rows.size() - shown) + " more beats; --all shows them.");
    }
  }

  /** A remark stands beside the marks, or below them if they are too wide for that. */
  private static void print(BeatRow row, int cycle, int widest, PrintWriter out) {
    String head =
        String.format(
            "%s %3d %-14s ",
            row.samam() ? "||" : "  ",
            Math.floorMod(row.beat(), (long) cycle) + 1,
            row.kriya().words());
    String under = " ".repeat(head.length());
    String remark = onTheBeat(row);
    List<String> lines = lines(row.marks(), COLUMNS - head.length());
    boolean beside = lines.size() == 1 && lines.get(0).length() <= widest;
    String gap = beside ? " ".repeat(widest - lines.get(0).length()) + BESIDE : "";
    out.println(head + lines.get(0) + (remark.isEmpty() || !beside ? "" : gap + remark));
    lines.subList(1, lines.size()).forEach(line -> out.println(under + line));
    if (!remark.isEmpty() && !beside) {
      out.println(under + BESIDE + remark);
    }
  }

  /** The marks in lines of a width, at least one. */
  private static List<String> lines(List<String> marks, int width) {
    List<String> lines = new ArrayList<>(List.of(""));
    for (String mark : marks) {
      int last = lines.size() - 1;
      String longer = lines.get(last).isEmpty() ? mark : lines.get(last) + " " + mark;
      if (longer.length() <= width) {
        lines.set(last, longer);
      } else {
        lines.add(mark);
      }
    }
    return lines;
  }

  private static String onTheBeat(BeatRow row) {
    if (row.onTheBeat().isEmpty()) {
      return "silent on the beat";
    }
    String sollu = row.onTheBeat().get().spelling();
    return row.begins() ? "" : sollu + " rings over the beat";
  }
}
