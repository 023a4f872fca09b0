package org.matraloom.app.handon;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.BreathOptions;
import org.matraloom.app.cli.DroneOptions;
import org.matraloom.app.cli.ExactNumber;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.ProgressLine;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.pack.PackMaker;
import org.matraloom.pack.PackMix;
import org.matraloom.pack.PackOrder;
import org.matraloom.score.Composition;
import org.matraloom.time.Ratio;
import org.matraloom.wav.PcmFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes a set of practice tracks. */
@Command(
    name = "pack",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Make a set of practice tracks for students, at several tempi and in several mixes.",
      "With sections and joins, all equally loud, as WAV and as MP3 for phones, a page and a list.",
      "Started again after an interruption it makes only what is missing."
    },
    footer = {
      "",
      "Example: matraloom pack samples-synth/gutter-song.loom -d gutter-set --drone C#",
      "Keep the level low when you listen through headphones."
    })
public final class PackCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(
      names = {"-o", "--output", "-d", "--directory"},
      required = true,
      paramLabel = "DIR",
      description = "The folder of the set; it is made if it does not exist.")
  private Path folder;

  @Option(
      names = "--tempi",
      split = ",",
      paramLabel = "PERCENT",
      description = "Tempi in percent of the full one (60,75,88,100 if not given).")
  private List<ExactNumber> tempi;

  @Option(
      names = "--mixes",
      split = ",",
      paramLabel = "MIX",
      description = "${COMPLETION-CANDIDATES}; all if not given.")
  private List<PackMix> mixes;

  @Option(names = "--no-drills", description = "Leave out the sections and joins.")
  private boolean noDrills;

  @Option(names = "--no-mp3", description = "Make WAV files only.")
  private boolean noMp3;

  @Option(
      names = "--count-in",
      paramLabel = "N",
      defaultValue = "1",
      description = "Avartanas counted before each track, 1 to 4 (default ${DEFAULT-VALUE}).")
  private int countIn;

  @Option(
      names = "--breath-cue",
      description = "Plan the breaths of every track and cue each with the sound of an inhalation.")
  private boolean breathCue;

  @Mixin private BreathOptions breaths;

  @Mixin private DroneOptions drone;

  @Mixin private VoiceOptions voice;

  @Override
  public Integer call() throws IOException {
    if (breaths.isGiven() && !breathCue) {
      throw BreathOptions.unheard();
    }
    Composition composition = OneTala.of(score.read(), "a set of tracks");
    PackOrder order = UserError.unlessRefused(() -> order(composition));
    Files.createDirectories(folder);
    int rate = PcmFormat.USUAL.ratePerSecond();
    PackMaker maker =
        UserError.unlessRefused(
            () -> new PackMaker(order, folder, () -> voice.voice(rate, score.lexicon())));
    int made = make(maker);
    PrintWriter out = command.commandLine().getOut();
    out.println(
        folder
            + ": "
            + maker.tracks().size()
            + " tracks, "
            + made
            + " files made now; open "
            + folder.resolve("index.html"));
    return ExitCode.DONE;
  }

  private int make(PackMaker maker) throws IOException {
    int threads = Runtime.getRuntime().availableProcessors();
    try (ProgressLine progress = new ProgressLine(command.commandLine().getErr())) {
      return maker.make(threads, progress::rendered);
    } catch (IllegalArgumentException refused) {
      throw new UserError(refused.getMessage());
    }
  }

  private PackOrder order(Composition composition) {
    List<Ratio> percents =
        tempi == null
            ? PackOrder.USUAL_PERCENTS
            : tempi.stream()
                .map(tempo -> tempo.isPercent() ? tempo.value().times(100) : tempo.value())
                .toList();
    return new PackOrder(
        composition,
        percents,
        mixes == null ? List.of(PackMix.values()) : mixes,
        !noDrills,
        countIn,
        drone.sruti(),
        !noMp3,
        breathCue ? Optional.of(breaths.settings()) : Optional.empty());
  }
}
