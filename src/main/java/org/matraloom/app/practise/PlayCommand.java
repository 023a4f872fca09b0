package org.matraloom.app.practise;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.DeviceOptions;
import org.matraloom.app.cli.DroneOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.FormatOptions;
import org.matraloom.app.cli.MixOptions;
import org.matraloom.app.cli.NoteOptions;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.TimelineOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.device.SoundDevices;
import org.matraloom.live.Fade;
import org.matraloom.live.LivePiece;
import org.matraloom.score.Composition;
import org.matraloom.session.LiveSession;
import org.matraloom.sound.Mix;
import org.matraloom.sound.Passage;
import org.matraloom.sound.SrutiDrone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Plays a score live. */
@Command(
    name = "play",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Play a score live, with keys or a foot pedal; what is said now and next is shown.",
      "Keys start, stop, repeat, loop, mute and change the tempo. Press ? for their list."
    },
    footer = {
      "",
      "Without a terminal it plays once through and tells what goes on in lines.",
      "How long a drill was played is noted in the practice log, see: matraloom log --help",
      "Example: matraloom play samples-synth/gutter-song.loom --without ticks",
      "         matraloom play --drill \"switch 4 5 --every halving --tempo 60\"",
      "Start with a low level, above all with headphones."
    })
public final class PlayCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(
      names = "--drill",
      help = true,
      paramLabel = "\"WORDS\"",
      description = "Play a drill in place of a score, asked for as in the drill command.")
  private String drill;

  @Mixin private TimelineOptions timeline;

  @Mixin private MixOptions mix;

  @Mixin private DroneOptions drone;

  @Option(
      names = "--fade",
      arity = "0..1",
      fallbackValue = "4",
      paramLabel = "N",
      description = "Take the voice and the ticks away within N avartanas (4 if not given).")
  private Integer fadeAvartanas;

  @Mixin private VoiceOptions voice;

  @Mixin private FormatOptions format;

  @Mixin private DeviceOptions device;

  @Mixin private NoteOptions log;

  @Option(names = "--plain", description = "Tell what goes on in lines, also on a terminal.")
  private boolean plain;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    if (device.isListAskedFor()) {
      DeviceOptions.print(out);
      return ExitCode.DONE;
    }
    MadeDrill made = drill == null ? ofScore() : ofDrill();
    LivePiece piece = piece(made);
    Mix first = made.passages().get(0).mix();
    Optional<Fade> fade = fade();
    LiveSession session =
        new LiveSession(
            piece,
            first,
            fade,
            SoundDevices.find().openOut(device.device(), piece.format(), SoundDevices.SOON_MS));
    if (plain || !session.onScreen()) {
      session.inLines(out, System.in);
    }
    voice.tellInstead(command.commandLine().getErr());
    if (drill != null) {
      DrillEntry.of(made.passages(), session.playedSeconds())
          .ifPresent(entry -> log.note(entry, out));
    }
    return ExitCode.DONE;
  }

  private MadeDrill ofScore() throws IOException {
    Composition composition = OneTala.of(score.read(), "playing live");
    Passage passage = new Passage(timeline.shown(composition).timeline(), mix.mix());
    return new MadeDrill(
        composition,
        "",
        List.of(passage),
        Optional.empty(),
        timeline.countInAvartanas(),
        drone.sruti(),
        format.format());
  }

  private MadeDrill ofDrill() throws IOException {
    return DrillToPlay.of(drill, command.commandLine().getOut(), command.commandLine().getErr());
  }

  private LivePiece piece(MadeDrill made) {
    int rate = made.format().ratePerSecond();
    return new LivePiece(
        made.passages().stream().map(Passage::timeline).toList(),
        made.countInAvartanas(),
        voice.voice(rate, score.lexicon()),
        made.sruti().map(tonic -> new SrutiDrone(tonic, rate)),
        made.format(),
        timeline.breaths());
  }

  private Optional<Fade> fade() {
    try {
      return Optional.ofNullable(fadeAvartanas).map(Fade::new);
    } catch (IllegalArgumentException outOfRange) {
      throw new UserError(outOfRange.getMessage());
    }
  }
}
