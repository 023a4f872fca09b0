package org.matraloom.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.take.Onset;
import org.matraloom.take.OnsetCurve;
import org.matraloom.take.Recording;
import org.matraloom.take.RecordingException;
import org.matraloom.take.Recordings;
import org.matraloom.take.TakeFindings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Measures a recording against its score, or lists where sounds begin in it. */
@Command(
    name = "take",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Measure a recording against its score: pulse, speed of each nadai, landing, breaths.",
      "Reads WAV, AIFF, FLAC, MP3, Opus, Ogg Vorbis and M4A (AAC) files."
    },
    footer = {
      "",
      "Exit code 1 if the take does not land, or if it cannot be judged; the reason is said.",
      "Example: matraloom take samples-synth/gutter-song.loom monday.wav",
      "Where sounds begin, without a score: matraloom take --onsets lesson.m4a"
    })
final class TakeCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(
      arity = "0..2",
      paramLabel = "SCORE RECORDING",
      description = "The score, a .loom file, and the recording of it.")
  private List<Path> files = List.of();

  @Mixin private LexiconOptions lexicon;

  @Option(names = "--json", description = "Write JSON.")
  private boolean json;

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

  @Override
  public Integer call() throws IOException {
    if (recording != null) {
      return listOnsets();
    }
    if (files.size() != 2) {
      throw new UserError(
          "take wants a score and a recording, such as: matraloom take piece.loom monday.wav");
    }
    Timeline timeline = ScoreTimeline.of(Performance.of(score()), 0);
    TakeFindings findings = TakeFindings.of(timeline, listen(files.get(1)), lexicon.lexicon());
    PrintWriter out = command.commandLine().getOut();
    TakeJson.write(findings, out);
    boolean good =
        findings.doubt().isEmpty() && findings.landing().filter(l -> l.lands()).isPresent();
    return good ? ExitCode.DONE : ExitCode.CHECK_FAILED;
  }

  private Composition score() {
    Reading reading = ScoreReader.read(files.get(0), lexicon.lexicon());
    PrintWriter err = command.commandLine().getErr();
    reading.problems().forEach(problem -> err.println(problem.format()));
    return reading.composition().orElseThrow(UserError::alreadyTold);
  }

  private int listOnsets() throws IOException {
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

  private static OnsetCurve listen(Path file) throws IOException {
    try (Recording sound = Recordings.open(file)) {
      return OnsetCurve.of(sound);
    } catch (RecordingException unreadable) {
      throw new UserError(unreadable.getMessage());
    }
  }
}
