package org.matraloom.app.hear;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.matraloom.app.cli.PictureFile;
import org.matraloom.app.cli.SheetOutput;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.measure.TakeFindings;
import org.matraloom.retell.DeviationPicture;
import org.matraloom.retell.SlowedTake;
import org.matraloom.schedule.Timeline;
import picocli.CommandLine.Option;

/** Files that are made of a take besides its report. */
final class TakeOutputs {

  private static final double LEAST_GAIN_DB = 0.1;

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "Draw how far every sollu is from the pulse, as FILE.svg or FILE.png.")
  private Path picture;

  @Option(
      names = "--slowed",
      paramLabel = "PERCENT",
      converter = SlowShare.Converter.class,
      description = "Write the take slowed to 25%% to 100%%, its pitch unchanged, with clicks.")
  private SlowShare slow;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "OUT.wav",
      description = "Where the slowed take goes; an older file is replaced.")
  private Path output;

  @Option(names = "--no-clicks", description = "Slow the take without clicks on its beats.")
  private boolean noClicks;

  /** Refuses what cannot be done, before anything is measured. */
  void requireSense(boolean comparing, List<Path> sources) {
    if (comparing && (picture != null || slow != null)) {
      throw new UserError("--picture and --slowed are of one take; leave --compare out");
    }
    if ((slow == null) != (output == null)) {
      throw new UserError(
          slow == null
              ? "-o is for a slowed take; add --slowed 60%, or leave -o out"
              : "--slowed needs a file to write, such as -o slow.wav");
    }
    if (noClicks && slow == null) {
      throw new UserError("--no-clicks belongs to --slowed");
    }
    if (picture != null) {
      PictureFile.requireEnding(picture);
      requireOther(picture, sources);
    }
    if (output != null) {
      WholeFile.requirePlace(output);
      if (!SheetOutput.endingOf(output).equals("wav")) {
        throw new UserError(output + ": a slowed take is written as .wav");
      }
      requireOther(output, sources);
    }
  }

  private static void requireOther(Path target, List<Path> sources) {
    for (Path source : sources) {
      try {
        if (Files.exists(target) && Files.isSameFile(target, source)) {
          throw new UserError(target + " is what is measured; give the new file another name");
        }
      } catch (IOException notThere) {
        throw new UserError(source + ": there is no such file");
      }
    }
  }

  void write(TakeFindings findings, Timeline timeline, Path recording, PrintWriter out)
      throws IOException {
    if (picture != null) {
      PictureFile.write(DeviationPicture.of(timeline, findings), picture);
      out.println(picture);
    }
    if (slow != null) {
      SlowedTake.Written written =
          new SlowedTake(findings, timeline, slow.speed(), !noClicks).write(recording, output);
      out.println(
          String.format(
              Locale.ROOT,
              "%s: %.1f s, %s%s",
              output,
              written.seconds(),
              clicks(written),
              written.gainDb() < -LEAST_GAIN_DB
                  ? String.format(
                      Locale.ROOT, ", %.1f dB softer to leave room for them", -written.gainDb())
                  : ""));
    }
  }

  private String clicks(SlowedTake.Written written) {
    if (written.clicks() > 0) {
      return "clicks on " + written.clicks() + " beats";
    }
    return noClicks ? "no clicks" : "no clicks, as the pulse of the take is not known";
  }
}
