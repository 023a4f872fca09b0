package org.matraloom.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.matraloom.take.Onset;
import org.matraloom.take.OnsetCurve;
import org.matraloom.take.Recording;
import org.matraloom.take.RecordingException;
import org.matraloom.take.Recordings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists where sounds begin in a recording. */
@Command(
    name = "take",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Find where syllables and strokes begin in a recording, without a score.",
      "Reads WAV, AIFF, FLAC, MP3, Opus, Ogg Vorbis and M4A (AAC) files."
    },
    footer = {
      "",
      "One time a line, in seconds from the beginning of the recording: where the consonant is",
      "released or the sound attacks.",
      "Example: matraloom take --onsets lesson.m4a"
    })
final class TakeCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Option(
      names = "--onsets",
      required = true,
      paramLabel = "RECORDING",
      description = "The recording to listen to.")
  private Path recording;

  @Option(
      names = "--confidence",
      paramLabel = "SHARE",
      description = "List only what is at least this sure, 0.01 to 1 (default: ${DEFAULT-VALUE}).")
  private double confidence = OnsetCurve.USUAL_CONFIDENCE;

  @Override
  public Integer call() throws IOException {
    if (!(confidence >= 0.01 && confidence <= 1)) {
      throw new UserError("--confidence is " + confidence + "; it must be from 0.01 to 1");
    }
    PrintWriter out = command.commandLine().getOut();
    OnsetCurve curve = listen();
    for (Onset onset : curve.onsets(confidence)) {
      out.println(String.format(Locale.ROOT, "%.4f", onset.seconds()));
    }
    if (curve.isSilent()) {
      command.commandLine().getErr().println("matraloom: " + recording + " is silent");
    }
    return ExitCode.DONE;
  }

  private OnsetCurve listen() throws IOException {
    try (Recording sound = Recordings.open(recording)) {
      return OnsetCurve.of(sound);
    } catch (RecordingException unreadable) {
      throw new UserError(unreadable.getMessage());
    }
  }
}
