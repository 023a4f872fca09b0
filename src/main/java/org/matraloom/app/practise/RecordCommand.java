package org.matraloom.app.practise;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.DeviceOptions;
import org.matraloom.app.cli.DroneOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.FormatOptions;
import org.matraloom.app.cli.InputOption;
import org.matraloom.app.cli.MixOptions;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.TimelineOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.device.AudioIn;
import org.matraloom.device.AudioOut;
import org.matraloom.device.RoundTrip;
import org.matraloom.device.RoundTrips;
import org.matraloom.device.SoundDevices;
import org.matraloom.live.LivePiece;
import org.matraloom.schedule.Timeline;
import org.matraloom.session.RecordSession;
import org.matraloom.sound.Mix;
import org.matraloom.sound.MixPart;
import org.matraloom.sound.SrutiDrone;
import org.matraloom.sound.TakeNote;
import org.matraloom.wav.PcmFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Records a take while the guide is played. */
@Command(
    name = "record",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Record a take while the guide is played. Wear headphones, or the guide is recorded as well.",
      "The take is on the disk as it is said, whatever happens to the program."
    },
    footer = {
      "",
      "Without a terminal the level is measured for two seconds before the guide begins.",
      "Example: matraloom record samples-synth/gutter-song.loom --only claps -o monday.wav",
      "Start with a low level in the headphones. Rest your voice between takes."
    })
public final class RecordCommand implements Callable<Integer> {

  private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "OUT.wav",
      description = "The take, a new file (named after the score and the time if not given).")
  private Path output;

  @Option(
      names = "--without-guide",
      description = "Play the count-in and then nothing; the take is said alone.")
  private boolean withoutGuide;

  @Mixin private TimelineOptions timeline;

  @Mixin private MixOptions mix;

  @Mixin private VoiceOptions voice;

  @Mixin private DroneOptions drone;

  @Mixin private FormatOptions format;

  @Mixin private DeviceOptions device;

  @Mixin private InputOption input;

  @Option(names = "--plain", description = "Tell what goes on in lines, also on a terminal.")
  private boolean plain;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    if (device.isListAskedFor()) {
      DeviceOptions.print(out);
      return ExitCode.DONE;
    }
    Timeline laidOut =
        timeline.shown(OneTala.of(score.read(), "recording with a guide")).timeline();
    PcmFormat guide = format.format();
    Path target = target();
    SoundDevices devices = SoundDevices.find();
    Optional<RoundTrip> roundTrip = roundTrip(devices, guide.ratePerSecond());
    long frames = record(devices, laidOut, guide, roundTrip, target);
    if (frames > 0) {
      out.printf(Locale.ROOT, "%s: %.1f s%n", target, frames / (double) guide.ratePerSecond());
      out.println("Hear how it went: matraloom take " + score.file() + " " + target);
      if (roundTrip.isEmpty()) {
        out.println(
            "the delay of these devices was never measured, so the place of the guide in the take"
                + " is not exact; see: matraloom calibrate --help");
      }
    }
    return ExitCode.DONE;
  }

  private long record(
      SoundDevices devices,
      Timeline laidOut,
      PcmFormat guide,
      Optional<RoundTrip> roundTrip,
      Path target)
      throws IOException {
    int rate = guide.ratePerSecond();
    PcmFormat taken = new PcmFormat(rate, 16, 1);
    LivePiece piece =
        new LivePiece(
            List.of(laidOut),
            timeline.countInAvartanas(),
            voice.voice(rate, score.lexicon()),
            drone.sruti().map(tonic -> new SrutiDrone(tonic, rate)),
            guide,
            timeline.breaths());
    try (AudioOut heard = devices.openOut(device.device(), guide, SoundDevices.SAFE_MS);
        AudioIn said = devices.openIn(input.input(), taken)) {
      TakeNote note = note(laidOut, roundTrip);
      RecordSession session =
          new RecordSession(piece, guideMix(), heard, said, taken, note, target);
      Optional<Long> frames = plain ? Optional.empty() : session.onScreen();
      return frames.isPresent()
          ? frames.get()
          : session.inLines(command.commandLine().getOut(), System.in);
    }
  }

  private Optional<RoundTrip> roundTrip(SoundDevices devices, int rate) throws IOException {
    String from = devices.outName(device.device());
    String to = devices.inName(input.input());
    return RoundTrips.ofUser().find(from, to, rate);
  }

  private TakeNote note(Timeline laidOut, Optional<RoundTrip> roundTrip) throws IOException {
    return new TakeNote(
        score.file().getFileName().toString(),
        Files.readString(score.file(), StandardCharsets.UTF_8),
        laidOut,
        Optional.empty(),
        roundTrip.map(RoundTrip::frames));
  }

  private Mix guideMix() {
    return withoutGuide
        ? mix.mix().only(EnumSet.noneOf(MixPart.class)).withWholeCountIn()
        : mix.mix();
  }

  private Path target() {
    String name = score.file().getFileName().toString().replaceAll("\\.loom$", "");
    Path target =
        output == null ? Path.of(name + "-" + LocalDateTime.now().format(STAMP) + ".wav") : output;
    if (Files.exists(target)) {
      throw new UserError(
          target + " exists already, and a take is never overwritten; give another name");
    }
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new UserError("the folder " + folder + " does not exist; make it first");
    }
    return target;
  }
}
