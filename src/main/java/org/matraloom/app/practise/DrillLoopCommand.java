package org.matraloom.app.practise;

import java.io.IOException;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.practice.LoopDrill;
import org.matraloom.score.Composition;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Loops a phrase. */
@Command(
    name = "loop",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Loop one phrase at its place in the tala.",
    footer = {
      "",
      "Example: matraloom drill loop samples-synth/gutter-song.loom --phrase Stream -o stream.wav"
    })
final class DrillLoopCommand implements DrillMaker {

  @Mixin private ScoreOptions score;

  @Option(names = "--phrase", paramLabel = "NAME", required = true, description = "The phrase.")
  private String phrase;

  @Option(
      names = "--loops",
      paramLabel = "N",
      defaultValue = "8",
      description = "How often, 1 to 500 (default ${DEFAULT-VALUE}).")
  private int loops;

  @Mixin private DrillOutput output;

  @Override
  public DrillOutput output() {
    return output;
  }

  @Override
  public MadeDrill drill() throws IOException {
    Composition composition = OneTala.of(score.read(), "this drill");
    return output.made(UserError.unlessRefused(() -> LoopDrill.of(composition, phrase, loops)));
  }
}
