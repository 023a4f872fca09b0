package org.matraloom.app.handon;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.DroneOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.MixOptions;
import org.matraloom.app.cli.PictureFile;
import org.matraloom.app.cli.ProgressLine;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.SheetOutput;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.film.FilmCoding;
import org.matraloom.film.FilmMaker;
import org.matraloom.film.FilmOrder;
import org.matraloom.film.FilmStill;
import org.matraloom.sound.SrutiDrone;
import org.matraloom.time.FrameClock;
import org.matraloom.voice.SolluVoice;
import org.matraloom.wav.PcmFormat;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes a film to teach with. */
@Command(
    name = "film",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Make a film to teach with.",
      "The line that is said large, the beat lit, the hand, what comes next, and a change of",
      "nadai told an avartana before.",
      "As .mp4 (H.264, AAC) or .webm (VP9, Opus), with chapters and subtitles; needs ffmpeg."
    },
    footer = {
      "",
      "Keep the level low; rest your voice after a quarter of an hour.",
      "Example: matraloom film samples-synth/monsoon-ledger.loom -o ledger.mp4 --without voice"
    })
public final class FilmCommand implements Callable<Integer> {

  /** What is written: one of these. */
  static final class Target {
    @Option(
        names = {"-o", "--output"},
        paramLabel = "OUT",
        description = "The film, .mp4 or .webm; an older one is replaced.")
    private Path film;

    @Option(
        names = "--frames",
        paramLabel = "DIR",
        description = "Pictures (PNG) and sound (WAV) in a new folder; needs no ffmpeg.")
    private Path frames;

    @Option(
        names = "--still",
        paramLabel = "OUT",
        description = "One picture a round, .png or .svg, its name numbered; needs no ffmpeg.")
    private Path still;
  }

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @ArgGroup(multiplicity = "1")
  private Target target;

  @Option(
      names = "--poster",
      paramLabel = "OUT.png",
      description = "Write the title card beside it; an .mp4 holds it anyway.")
  private Path poster;

  @Mixin private FilmOptions film;

  @Mixin private MixOptions mix;

  @Mixin private DroneOptions drone;

  @Mixin private VoiceOptions voice;

  @Option(
      names = "--ffmpeg",
      paramLabel = "PROGRAM",
      defaultValue = "ffmpeg",
      description = "The ffmpeg to be used, by name or place.")
  private String ffmpeg;

  @Override
  public Integer call() throws IOException {
    refuseWrongNames();
    int rate = PcmFormat.USUAL.ratePerSecond();
    SolluVoice said = voice.voice(rate, score.lexicon());
    FilmOrder order =
        film.order(
            score.read(),
            score.lexicon(),
            mix.mix(),
            said,
            drone.sruti().map(tonic -> new SrutiDrone(tonic, rate)));
    FilmMaker maker = new FilmMaker(order);
    PrintWriter out = command.commandLine().getOut();
    if (target.still != null) {
      stills(maker, out);
    } else {
      try (ProgressLine progress = new ProgressLine(command.commandLine().getErr())) {
        if (target.frames != null) {
          maker.writeFrames(target.frames, progress);
        } else {
          maker.write(target.film, coding(), ffmpeg, progress);
        }
      }
      double seconds = FrameClock.seconds(maker.lengthFrames(), rate);
      Path written = target.frames == null ? target.film : target.frames;
      out.printf(Locale.ROOT, "%s: %.1f s, %d pictures%n", written, seconds, maker.pictures());
    }
    voice.tellInstead(command.commandLine().getErr());
    if (poster != null) {
      WholeFile.write(poster, maker::writePoster);
      out.println(poster);
    }
    return ExitCode.DONE;
  }

  private void refuseWrongNames() {
    if (target.film != null) {
      coding();
      WholeFile.requirePlace(target.film);
    }
    if (target.still != null) {
      PictureFile.requireEnding(target.still);
    }
    if (poster != null && !SheetOutput.endingOf(poster).equals("png")) {
      throw new UserError(poster + ": a poster is written as .png");
    }
  }

  private FilmCoding coding() {
    String ending = SheetOutput.endingOf(target.film);
    for (FilmCoding coding : FilmCoding.values()) {
      if (coding.ending().equals(ending)) {
        return coding;
      }
    }
    throw new UserError(target.film + ": a film is written as .mp4 or .webm");
  }

  private void stills(FilmMaker maker, PrintWriter out) throws IOException {
    List<FilmStill> stills = maker.stills();
    for (int index = 0; index < stills.size(); index++) {
      Path file = SheetOutput.numbered(target.still, index + 1);
      FilmStill still = stills.get(index);
      if (SheetOutput.endingOf(file).equals("svg")) {
        WholeFile.writeText(file, still::writeSvg);
      } else {
        WholeFile.write(file, still::writePng);
      }
      out.println(file);
    }
  }
}
