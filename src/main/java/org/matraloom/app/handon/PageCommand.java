package org.matraloom.app.handon;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.DroneOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.RoundsOption;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.SheetOutput;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.page.PageSound;
import org.matraloom.page.PhonePage;
import org.matraloom.score.Performance;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetOptions;
import org.matraloom.voice.SolluVoice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes one page for a phone. */
@Command(
    name = "page",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Write one HTML file that works offline on a phone.",
      "The sheet follows the sound and loops any avartanas, from 50 to 110 %% of the tempo."
    },
    footer = {
      "",
      "Keep the level low; rest your voice after a quarter of an hour.",
      "Example: matraloom page samples-synth/gutter-song.loom -o gutter-song.html"
    })
public final class PageCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(
      names = {"-o", "--output"},
      required = true,
      paramLabel = "OUT.html",
      description = "The file to write; an older one is replaced.")
  private Path output;

  @Mixin private RoundsOption rounds;

  @Mixin private PageContentOptions content;

  @Mixin private DroneOptions drone;

  @Option(
      names = "--voice",
      paramLabel = "WHO",
      defaultValue = VoiceOptions.USUAL,
      description = VoiceOptions.WHO)
  private String who;

  @Override
  public Integer call() throws IOException {
    if (!SheetOutput.endingOf(output).startsWith("htm")) {
      throw new UserError(output + ": a page is written as .html");
    }
    Performance performance = rounds.of(Performance.of(score.read()));
    SheetOptions options = content.options(performance, score.lexicon());
    Sheet sheet = Sheet.of(performance, options, content.breaths(performance));
    SolluVoice voice = PhoneSound.voice(who, score.lexicon());
    PageSound sound = PhoneSound.of(performance, voice, content, drone.sruti());
    WholeFile.writeText(output, file -> PhonePage.write(sheet, sound, file));
    command.commandLine().getOut().println(output);
    VoiceOptions.tellInstead(List.of(voice), who, command.commandLine().getErr());
    return ExitCode.DONE;
  }
}
