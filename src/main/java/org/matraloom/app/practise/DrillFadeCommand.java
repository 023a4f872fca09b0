package org.matraloom.app.practise;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.score.Composition;
import org.matraloom.sound.Mix;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lets the voice fade. */
@Command(
    name = "fade",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Say a score with a voice that fades from round to round.",
    footer = {
      "",
      "Example: matraloom drill fade samples-synth/gutter-song.loom --by 9 -o fade.wav"
    })
final class DrillFadeCommand implements DrillMaker {

  @Mixin private ScoreOptions score;

  @Option(
      names = "--by",
      paramLabel = "DB",
      defaultValue = "9",
      description = "How much the voice falls each round, 0 to 24 dB (default ${DEFAULT-VALUE}).")
  private double fadeDb;

  @Mixin private DrillOutput output;

  @Override
  public DrillOutput output() {
    return output;
  }

  @Override
  public MadeDrill drill() throws IOException {
    Composition composition = score.read();
    Mix fading = UserError.unlessRefused(() -> output.mix().withVoiceFade(fadeDb));
    return output.made(
        composition,
        "the voice fades by " + fadeDb + " dB a round",
        List.of(composition),
        Function.identity(),
        fading);
  }
}
