package org.matraloom.app.practise;

import java.io.IOException;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.practice.JoinDrill;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Loops the beats around a change of nadai. */
@Command(
    name = "join",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Loop the last beats before a change of nadai and the first after it.",
    footer = {
      "",
      "Example: matraloom drill join samples-synth/gutter-song.loom --loops 10 -o join.wav"
    })
final class DrillJoinCommand implements DrillMaker {

  @Mixin private ScoreOptions score;

  @Option(
      names = "--join",
      paramLabel = "N",
      defaultValue = "1",
      description = "Which change of nadai (default ${DEFAULT-VALUE}).")
  private int join;

  @Option(
      names = "--beats",
      paramLabel = "N",
      defaultValue = "" + JoinDrill.USUAL_BEATS,
      description = "Beats on either side, 1 to 32 (default ${DEFAULT-VALUE}).")
  private int beats;

  @Option(
      names = "--loops",
      paramLabel = "N",
      defaultValue = "10",
      description = "How often, 1 to 200 (default ${DEFAULT-VALUE}).")
  private int loops;

  @Mixin private DrillOutput output;

  @Override
  public DrillOutput output() {
    return output;
  }

  @Override
  public MadeDrill drill() throws IOException {
    Composition composition = OneTala.of(score.read(), "this drill");
    return output.made(
        UserError.unlessRefused(
            () -> JoinDrill.of(composition, join, beats, loops, Lexicon.standard())));
  }
}
