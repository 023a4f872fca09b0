package org.matraloom.app.hear;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.UserError;
import org.matraloom.measure.GuideGaps;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.recording.Recording;
import org.matraloom.recording.RecordingException;
import org.matraloom.recording.Recordings;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists where sounds begin in a recording, without a score. */
final class OnsetOptions {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--onsets",
      paramLabel = "RECORDING",
      description = "Only list where sounds begin in a recording, in seconds.")
  private Path recording;

  @Option(
      names = "--confidence",
      paramLabel = "SHARE",
      description =
          "With --onsets: only what is at least this sure, 0.01 to 1 (default: ${DEFAULT-VALUE}).")
  private double confidence = OnsetCurve.USUAL_CONFIDENCE;

  boolean isAsked() {
    return recording != null;
  }

  /** Prints one time a line. */
  int list() throws IOException {
    if (!(confidence >= 0.01 && confidence <= 1)) {
      throw new UserError("--confidence is " + confidence + "; it must be from 0.01 to 1");
    }
    PrintWriter out = command.commandLine().getOut();
    OnsetCurve curve = listen(recording);
    for (Onset onset : curve.onsets(confidence)) {
      out.println(String.format(Locale.ROOT, "%.4f", onset.seconds()));
    }
    if (curve.isSilent()) {
      command.commandLine().getErr().println("matraloom: " + recording + " is silent");
    }
    return ExitCode.DONE;
  }

  /** Listens to a recording; what is wrong with the file is the user's error. */
  static OnsetCurve listen(Path file) throws IOException {
    return listen(file, GuideGaps.NONE);
  }

  /** Listens to a take, without the stretches in which its guide stood still. */
  static OnsetCurve listen(Path file, GuideGaps gaps) throws IOException {
    requireFile(file);
    try (Recording sound = gaps.leftOutOf(Recordings.open(file))) {
      return OnsetCurve.of(sound);
    } catch (RecordingException unreadable) {
      throw new UserError(unreadable.getMessage());
    }
  }

  /** Refuses what is no file, before anything is read from it. */
  static void requireFile(Path file) {
    if (Files.isDirectory(file)) {
      throw new UserError(file + " is a folder; give the name of a recording in it");
    }
    if (Files.notExists(file)) {
      throw new UserError("there is no recording " + file);
    }
  }
}
