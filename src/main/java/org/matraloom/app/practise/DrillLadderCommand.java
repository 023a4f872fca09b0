package org.matraloom.app.practise;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.matraloom.app.cli.ExactNumber;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.practice.TempoLadder;
import org.matraloom.score.Composition;
import org.matraloom.time.Ratio;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takes a score up or down a ladder of tempi. */
@Command(
    name = "ladder",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Take a score through a ladder of tempi, each rung counted in.",
    footer = {
      "",
      "Example: matraloom drill ladder samples-synth/gutter-song.loom --from 70 --by 10 --to 140 -o ladder.wav"
    })
final class DrillLadderCommand implements DrillMaker {

  @Mixin private ScoreOptions score;

  @Option(
      names = "--from",
      paramLabel = "BPM",
      description = "The slowest tempo (half of the fastest if not given).")
  private ExactNumber from;

  @Option(
      names = "--by",
      paramLabel = "BPM",
      defaultValue = "10",
      description = "What each rung adds (default ${DEFAULT-VALUE}).")
  private ExactNumber by;

  @Option(
      names = "--to",
      paramLabel = "BPM",
      description = "The fastest tempo (the tempo of the score if not given).")
  private ExactNumber to;

  @Option(
      names = "--clear-at",
      paramLabel = "RATE",
      description = "Take as the fastest tempo the one with this many matras a second.")
  private Double clearRate;

  @Option(
      names = "--way",
      paramLabel = "WAY",
      defaultValue = "up",
      description = "up, down or both; down works backwards from the fastest line.")
  private TempoLadder.Way way;

  @Option(
      names = "--repeats",
      paramLabel = "N",
      defaultValue = "1",
      description = "How often each rung is taken, 1 to 20 (default ${DEFAULT-VALUE}).")
  private int repeats;

  @Mixin private DrillOutput output;

  @Override
  public DrillOutput output() {
    return output;
  }

  @Override
  public MadeDrill drill() throws IOException {
    Composition composition = score.read();
    TempoLadder ladder = UserError.unlessRefused(() -> ladder(composition));
    List<Composition> rungs = ladder.rungs().stream().map(composition::at).toList();
    String tempi =
        ladder.rungs().stream()
            .map(rung -> rung.beatsPerMinute().toMixed())
            .collect(Collectors.joining(", "));
    return output.made(rungs.get(0), "rungs at " + tempi, rungs, Function.identity(), output.mix());
  }

  private TempoLadder ladder(Composition composition) {
    Ratio top = to == null ? composition.tempo().beatsPerMinute() : to.value();
    if (clearRate != null) {
      top = TempoLadder.fastestAt(composition, clearRate).beatsPerMinute();
    }
    Ratio bottom = from == null ? top.dividedBy(2) : from.value();
    return TempoLadder.of(bottom, by.value(), top, repeats, way);
  }
}
