package org.matraloom.app.practise;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.TwoReciters;
import org.matraloom.score.Wording;
import org.matraloom.sound.Companion;
import org.matraloom.sound.MixPart;
import org.matraloom.sound.Passage;
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
      "Parts: clap, count, wave, tick, voice, breath, drone, second, drum.",
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
    Composition piece = score.readAll();
    Passage passage = TwoReciters.in(piece) ? both(TwoReciters.of(piece)) : alone(piece);
    IntFunction<SolluVoice> voices =
        sayer(rate -> voice.voice(rate, score.lexicon()), piece.wording());
    String tempo = "at " + piece.tempo().beatsPerMinute().toMixed() + " beats a minute";
    new TrackOutput(out, err, voices)
        .write(List.of(passage), tempo, drone.sruti(), format.format(), output);
    voice.tellInstead(err);
    return ExitCode.DONE;
  }

  private Passage alone(Composition piece) {
    Timeline heard = timeline.timeline(piece);
    return new Passage(heard, mix.mix(), drummer(heard, piece.wording()));
  }

  /** Two reciters, left and right; a drum beside them plays what the first one says. */
  private Passage both(TwoReciters reciters) {
    Timeline first = timeline.timeline(reciters.first());
    Timeline second = timeline.beside(reciters.second());
    List<Companion> companions = new ArrayList<>(drummer(first, reciters.first().wording()));
    companions.add(
        new Companion(
            MixPart.SECOND,
            second,
            sayer(rate -> voice.second(rate, score.lexicon()), reciters.second().wording())));
    return new Passage(first, mix.mixOfTwo(), companions);
  }

  private List<Companion> drummer(Timeline heard, Wording wording) {
    return drum.beside(score.lexicon(), wording).stream()
        .map(table -> new Companion(MixPart.DRUM, heard, rate -> drumVoice(rate, table)))
        .toList();
  }

  /** Who says the sollus: the voice, or a drum tuned to the drone. */
  private IntFunction<SolluVoice> sayer(IntFunction<SolluVoice> speaker, Wording wording) {
    Optional<StrokeTable> strokes = drum.table(score.lexicon(), wording);
    return rate ->
        strokes
            .<SolluVoice>map(table -> drumVoice(rate, table))
            .orElseGet(() -> speaker.apply(rate));
  }

  private DrumVoice drumVoice(int rate, StrokeTable table) {
    double hertz = drone.sruti().map(Sruti::hertz).orElse(DrumVoice.USUAL_HERTZ);
    return new DrumVoice(rate, hertz, table);
  }
}
