package org.matraloom.app.practise;

import java.io.IOException;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.practice.SpeedsDrill;
import org.matraloom.score.Composition;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says a phrase in three speeds. */
@Command(
    name = "speeds",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Say a phrase in three speeds over one steady beat (trikala).",
    footer = {
      "",
      "Example: matraloom drill speeds samples-synth/gutter-song.loom --phrase Drip --tempo 40"
    })
final class DrillSpeedsCommand implements DrillMaker {

  @Mixin private ScoreOptions score;

  @Option(names = "--phrase", paramLabel = "NAME", required = true, description = "The phrase.")
  private String phrase;

  @Option(names = "--tisram", description = "Add three for two between the first and second speed.")
  private boolean tisram;

  @Option(names = "--backwards", description = "Go from the fastest to the slowest.")
  private boolean backwards;

  @Option(
      names = "--passes",
      paramLabel = "N",
      defaultValue = "1",
      description = "How often, 1 to 100 (default ${DEFAULT-VALUE}).")
  private int passes;

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
            () -> SpeedsDrill.of(composition, phrase, tisram, backwards, passes)));
  }
}
