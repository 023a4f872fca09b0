package org.matraloom.app.practise;

import java.util.List;
import org.matraloom.app.cli.UserError;
import org.matraloom.practice.SwitchDrill;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes plain words that switch between nadais. */
@Command(
    name = "switch",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Say plain subdivision words that switch between nadais.",
    footer = {
      "",
      "Example: matraloom drill switch 4 5 --every halving -o switch.wav --score switch.loom"
    })
final class DrillSwitchCommand implements DrillMaker {

  private enum Every {
    AVARTANA,
    HALF,
    TWO,
    BEAT,
    HALVING,
    RANDOM
  }

  @Parameters(
      arity = "1..*",
      split = "-",
      paramLabel = "NADAI",
      description = "Two nadais or more, each 3 to 9 matras a beat, in turn, such as 4 5 or 4-5.")
  private List<Integer> nadais;

  @Option(
      names = "--every",
      paramLabel = "LENGTH",
      defaultValue = "halving",
      description = {
        "How long each is kept: avartana, half, two, beat, halving or random",
        "(two = two beats; halving = all of these in turn; default ${DEFAULT-VALUE})."
      })
  private Every every;

  @Option(
      names = "--passes",
      paramLabel = "N",
      defaultValue = "4",
      description =
          "How often each unit, or how many avartanas at random, 1 to 200 (default ${DEFAULT-VALUE}).")
  private int passes;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Another number gives other random switches (default ${DEFAULT-VALUE}).")
  private long seed;

  @Mixin private DrillSetting setting;

  @Mixin private DrillOutput output;

  @Override
  public DrillOutput output() {
    return output;
  }

  @Override
  public MadeDrill drill() {
    Composition place = setting.read();
    return output.made(UserError.unlessRefused(() -> drill(place)));
  }

  private Composition drill(Composition place) {
    Lexicon lexicon = Lexicon.standard();
    if (every == Every.RANDOM) {
      return SwitchDrill.random(place.avartana(), place.tempo(), nadais, passes, seed, lexicon);
    }
    SwitchDrill.Unit unit =
        every == Every.TWO ? SwitchDrill.Unit.TWO_BEATS : SwitchDrill.Unit.valueOf(every.name());
    return SwitchDrill.between(place.avartana(), place.tempo(), nadais, unit, passes, lexicon);
  }
}
