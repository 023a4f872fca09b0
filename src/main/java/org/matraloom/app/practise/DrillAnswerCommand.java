package org.matraloom.app.practise;

import java.io.IOException;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.practice.AnswerDrill;
import org.matraloom.score.Composition;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Leaves gaps to answer in. */
@Command(
    name = "answer",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Say each section and leave as many avartanas to say it back.",
    footer = {"", "Example: matraloom drill answer samples-synth/gutter-song.loom -o answer.wav"})
final class DrillAnswerCommand implements DrillMaker {

  @Mixin private ScoreOptions score;

  @Option(
      names = "--times",
      paramLabel = "N",
      defaultValue = "1",
      description = "How often each section is called, 1 to 50 (default ${DEFAULT-VALUE}).")
  private int times;

  @Mixin private DrillOutput output;

  @Override
  public DrillOutput output() {
    return output;
  }

  @Override
  public MadeDrill drill() throws IOException {
    Composition composition = OneTala.of(score.read(), "this drill");
    return output.made(UserError.unlessRefused(() -> AnswerDrill.of(composition, times)));
  }
}
