package org.matraloom.app.practise;

import java.io.IOException;
import java.util.List;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.schedule.ClickPattern;
import org.matraloom.schedule.ClickTimeline;
import org.matraloom.score.Composition;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lets the hand fall silent for some avartanas. */
@Command(
    name = "clicks",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Let the hand fall silent for some avartanas and come back.",
    footer = {
      "",
      "Example: matraloom drill clicks samples-synth/gutter-song.loom --heard 5 --silent 3 -o clicks.wav"
    })
final class DrillClicksCommand implements DrillMaker {

  @Mixin private ScoreOptions score;

  @Option(
      names = "--heard",
      paramLabel = "N",
      defaultValue = "5",
      description = "Avartanas in a row that are heard, 1 to 64 (default ${DEFAULT-VALUE}).")
  private int heard;

  @Option(
      names = "--silent",
      paramLabel = "N",
      defaultValue = "3",
      description = "Avartanas in a row that are not, 1 to 64 (default ${DEFAULT-VALUE}).")
  private int silent;

  @Option(
      names = "--random",
      paramLabel = "PERCENT",
      description = "Silence so many of a hundred avartanas at random instead, 1 to 90.")
  private Integer percent;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Another number gives other random silences (default ${DEFAULT-VALUE}).")
  private long seed;

  @Option(names = "--samam-only", description = "Keep the clap on samam in the silent avartanas.")
  private boolean samamOnly;

  @Mixin private DrillOutput output;

  @Override
  public DrillOutput output() {
    return output;
  }

  @Override
  public MadeDrill drill() throws IOException {
    Composition composition = score.read();
    ClickPattern pattern = UserError.unlessRefused(this::pattern);
    return output.made(
        composition,
        percent == null ? heard + " avartanas heard, " + silent + " silent" : percent + "% silent",
        List.of(composition),
        timeline -> new ClickTimeline(timeline, pattern),
        output.mix());
  }

  private ClickPattern pattern() {
    ClickPattern.Heard meanwhile =
        samamOnly ? ClickPattern.Heard.SAMAM : ClickPattern.Heard.NOTHING;
    return percent == null
        ? ClickPattern.fixed(heard, silent, meanwhile)
        : ClickPattern.random(percent, seed, meanwhile);
  }
}
