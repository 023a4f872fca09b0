package org.matraloom.app.practise;

import org.matraloom.app.cli.UserError;
import org.matraloom.practice.SwitchDrill;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Makes plain words in all nadais. */
@Command(
    name = "nadais",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Say plain words in all five nadais, up and down, an avartana each.",
    footer = {"", "Example: matraloom drill nadais --tempo 66 -o nadais.wav"})
final class DrillNadaisCommand implements DrillMaker {

  @Option(
      names = "--passes",
      paramLabel = "N",
      defaultValue = "1",
      description = "How often, 1 to 200 (default ${DEFAULT-VALUE}).")
  private int passes;

  @Mixin private DrillSetting setting;

  @Mixin private DrillOutput output;

  @Override
  public DrillOutput output() {
    return output;
  }

  @Override
  public MadeDrill drill() {
    Composition place = setting.read();
    return output.made(
        UserError.unlessRefused(
            () ->
                SwitchDrill.upAndDown(
                    place.avartana(), place.tempo(), passes, Lexicon.standard())));
  }
}
