package org.matraloom.app.practise;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.IntFunction;
import org.matraloom.app.cli.DroneOptions;
import org.matraloom.app.cli.DrumOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.FormatOptions;
import org.matraloom.app.cli.MixOptions;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.TimelineOptions;
import org.matraloom.app.cli.TrackOutput;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.drum.DrumVoice;
import org.matraloom.drum.StrokeTable;
import org.matraloom.sound.Sruti;
import org.matraloom.voice.SolluVoice;
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

  @Mixin private DrumOptions drum;

  @Mixin private FormatOptions format;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    PrintWriter err = command.commandLine().getErr();
    new TrackOutput(out, err, sayer())
        .write(timeline.timeline(score.read()), mix.mix(), drone.sruti(), format.format(), output);
    return ExitCode.DONE;
  }

  /** Who says the sollus: the voice, or a drum tuned to the drone. */
  private IntFunction<SolluVoice> sayer() {
    Optional<StrokeTable> strokes = drum.table(score.lexicon());
    double hertz = drone.sruti().map(Sruti::hertz).orElse(DrumVoice.USUAL_HERTZ);
    return rate ->
        strokes
            .<SolluVoice>map(table -> new DrumVoice(rate, hertz, table))
            .orElseGet(() -> voice.voice(rate, score.lexicon()));
  }
}
