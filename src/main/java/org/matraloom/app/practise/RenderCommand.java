package org.matraloom.app.practise;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.DroneOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.FormatOptions;
import org.matraloom.app.cli.MixOptions;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.TimelineOptions;
import org.matraloom.app.cli.TrackOutput;
import org.matraloom.app.cli.VoiceOptions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Renders a score to one practice track. */
@Command(
    name = "render",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Render a score to a practice track (WAV) in which the beat never moves.",
    footer = {
      "",
      "Parts: clap, count, wave, tick, voice, breath, drone.",
      "Example: matraloom render samples-synth/monsoon-ledger.loom -o slow.wav --slow 75%% --without ticks",
      "Keep the level low when you listen through headphones."
    })
public final class RenderCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(
      names = {"-o", "--output"},
      required = true,
      paramLabel = "OUT.wav",
      description = "The file to write; an older one is replaced.")
  private Path output;

  @Mixin private TimelineOptions timeline;

  @Mixin private MixOptions mix;

  @Mixin private DroneOptions drone;

  @Mixin private VoiceOptions voice;

  @Mixin private FormatOptions format;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    PrintWriter err = command.commandLine().getErr();
    new TrackOutput(out, err, rate -> voice.voice(rate, score.lexicon()))
        .write(timeline.timeline(score.read()), mix.mix(), drone.sruti(), format.format(), output);
    return ExitCode.DONE;
  }
}
