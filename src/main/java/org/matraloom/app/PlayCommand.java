package org.matraloom.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.matraloom.host.Fade;
import org.matraloom.host.LivePiece;
import org.matraloom.host.LiveSession;
import org.matraloom.host.SoundDevices;
import org.matraloom.schedule.Timeline;
import org.matraloom.sound.PcmFormat;
import org.matraloom.sound.PulseVoice;
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
      "Play a score live: what is said now and next is shown, and keys or a foot pedal start,",
      "stop, repeat, loop, mute and change the tempo. Press ? for the list of keys."
    },
    footer = {
      "",
      "Without a terminal it plays once through and tells what goes on in lines.",
      "Example: matraloom play samples-synth/gutter-song.loom --without ticks",
      "Start with a low level, above all with headphones."
    })
final class PlayCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

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

  @Mixin private FormatOptions format;

  @Mixin private DeviceOptions device;

  @Option(names = "--plain", description = "Tell what goes on in lines, also on a terminal.")
  private boolean plain;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    if (device.isListAskedFor()) {
      DeviceOptions.print(out);
      return ExitCode.DONE;
    }
    LivePiece piece = piece();
    Optional<Fade> fade = fade();
    LiveSession session =
        new LiveSession(
            piece, mix.mix(), fade, SoundDevices.find().openOut(device.device(), piece.format()));
    if (plain || !session.onScreen()) {
      session.inLines(out, System.in);
    }
    return ExitCode.DONE;
  }

  private LivePiece piece() {
    Timeline laidOut = timeline.timeline(score.read());
    PcmFormat pcm = format.format();
    int rate = pcm.ratePerSecond();
    return new LivePiece(
        List.of(laidOut),
        timeline.countInAvartanas(),
        new PulseVoice(rate),
        drone.sruti().map(tonic -> new SrutiDrone(tonic, rate)),
        pcm);
  }

  private Optional<Fade> fade() {
    try {
      return Optional.ofNullable(fadeAvartanas).map(Fade::new);
    } catch (IllegalArgumentException outOfRange) {
      throw new UserError(outOfRange.getMessage());
    }
  }
}
