package org.matraloom.app.prove;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.Json;
import org.matraloom.app.cli.NadaiNumber;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.score.Composition;
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

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(
      names = "--round",
      paramLabel = "N",
      defaultValue = "1",
      description = "Which round (default ${DEFAULT-VALUE}).")
  private int number;

  @Option(
      names = "--nadai",
      paramLabel = "N",
      description = "In this nadai: the round once more, to compare.")
  private NadaiNumber nadai;

  @Option(names = "--all", description = "Show every beat, not only a screenful.")
  private boolean all;

  @Option(names = "--json", description = "Write JSON, every beat.")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    Composition piece = OneTala.of(score.read(), "rebar");
    Performance performance = Performance.of(piece);
    List<Span.Round> rounds = performance.rounds();
    if (number < 1 || number > rounds.size()) {
      throw new UserError("--round is 1 to " + rounds.size() + ", given " + number);
    }
    List<BeatTable> tables = new ArrayList<>();
    tables.add(BeatTable.of(rounds.get(number - 1), performance));
    if (nadai != null) {
      Span.Round round = rounds.get(number - 1);
      Composition other =
          new Composition(
              piece.title(),
              piece.avartana(),
              piece.tempo(),
              piece.avartana().placeOf(round.startBeat()),
              piece.eduppuBeat(),
              piece.phrases(),
              List.of(new Step.Say(round.phrase(), 1, nadai.matrasPerBeat(), round.kalam())));
      Performance alone = Performance.of(other);
      tables.add(BeatTable.of(alone.rounds().get(0), alone));
    }
    print(tables);
    return ExitCode.DONE;
  }

  private void print(List<BeatTable> tables) throws IOException {
    PrintWriter out = command.commandLine().getOut();
    if (json) {
      try (Json written = Json.to(out)) {
        written.generator().writeStartArray();
        for (BeatTable table : tables) {
          table.write(written.generator());
        }
        written.generator().writeEndArray();
      }
      return;
    }
    for (BeatTable table : tables) {
      if (table != tables.get(0)) {
        out.println();
      }
      table.print(all ? Integer.MAX_VALUE : A_SCREENFUL, out);
    }
  }
}
