package org.matraloom.app.hear;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.BreathOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.LogOptions;
import org.matraloom.app.cli.NoteOptions;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.ReciterOption;
import org.matraloom.app.cli.RoundsOption;
import org.matraloom.app.cli.UserError;
import org.matraloom.breath.BreathPlan;
import org.matraloom.measure.GuideGaps;
import org.matraloom.measure.GuideStart;
import org.matraloom.measure.RecordedRounds;
import org.matraloom.measure.TakeFindings;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import picocli.CommandLine;
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
      "Two takes: matraloom take --compare samples-synth/gutter-song.loom monday.wav friday.wav",
      "Slowly, with clicks: matraloom take --slowed 60%% piece.loom monday.wav -o slow.wav",
      "Where sounds begin, without a score: matraloom take --onsets lesson.m4a",
      "Every take that can be judged is noted in the practice log, see: matraloom log",
      LogOptions.WHERE
    })
public final class TakeCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(
      arity = "0..3",
      paramLabel = "SCORE RECORDING",
      description = "The score, a .loom file, and the recording of it.")
  private List<Path> files = List.of();

  @Mixin private LexiconOptions lexicon;

  @Mixin private ReciterOption reciter;

  @Option(names = "--compare", description = "Set two recordings of the score side by side.")
  private boolean compare;

  @Option(names = "--json", description = "Write JSON.")
  private boolean json;

  @Mixin private RoundsOption rounds;

  @Option(
      names = "--voice",
      paramLabel = "NAME",
      description = {
        "Who speaks: a recorded voice, by its name or its folder, whose sollus the ear",
        "then knows beforehand, in later takes of this log too; none leaves it out.",
        "See matraloom voice."
      })
  private String mouth;

  @Mixin private BreathOptions breaths;

  @Mixin private TakeOutputs outputs;

  @Mixin private NoteOptions log;

  @Mixin private OnsetOptions onsets;

  @Override
  public Integer call() throws IOException {
    if (onsets.isAsked()) {
      return onsets.list();
    }
    if (files.size() != (compare ? 3 : 2)) {
      throw new UserError(
          compare
              ? "take --compare wants a score and two recordings of it"
              : "take wants a score and a recording, such as: take piece.loom monday.wav");
    }
    if (files.get(1).toString().endsWith(".loom")) {
      throw new UserError(
          "the score comes first: matraloom take " + files.get(1) + " " + files.get(0));
    }
    outputs.requireSense(compare, files);
    Composition score = score();
    files.stream().skip(1).forEach(OnsetOptions::requireFile);
    Performance performance = rounds(Performance.of(score));
    Timeline timeline = ScoreTimeline.of(performance, 0);
    BreathPlan plan = breaths.plan(performance);
    UsualMouth known = mouth();
    List<TakeFindings> takes = new ArrayList<>();
    for (Path file : files.subList(1, files.size())) {
      GuideGaps gaps = GuideGaps.of(file);
      tell(gaps);
      OnsetCurve curve = OnsetOptions.listen(file, gaps);
      takes.add(
          TakeFindings.of(
              timeline, curve, lexicon.lexicon(), GuideStart.of(file), plan, known.sounds()));
    }
    PrintWriter out = command.commandLine().getOut();
    Optional<String> list = lexicon.file().map(Path::toString);
    TypedDrill typed =
        new TypedDrill(files.get(0).toString(), list, score.avartana().tala().name());
    if (!json) {
      known.told().ifPresent(words -> out.println(Paragraph.of(words)));
    }
    if (compare) {
      return compare(takes, performance, typed, known.told(), out);
    }
    TakeFindings findings = takes.get(0);
    if (json) {
      TakeJson.write(findings, performance, typed, known.told(), out);
    } else {
      TakeReport.print(findings, performance, typed, out);
    }
    PrintWriter told = json ? new PrintWriter(Writer.nullWriter()) : out;
    Path recording = files.get(1);
    outputs.write(findings, timeline, recording, told);
    TakeEntry.note(findings, performance, recording, log, told);
    return findings.lands() ? ExitCode.DONE : ExitCode.CHECK_FAILED;
  }

  /** The voice that was named, or else the usual one of the log, with what is said of it. */
  private UsualMouth mouth() {
    if (mouth == null) {
      return UsualMouth.ofLog(log.usualVoice(), lexicon.lexicon(), "--voice " + UsualMouth.NONE);
    }
    UsualMouth named = UsualMouth.named(mouth, lexicon.lexicon());
    boolean isLeftOut = mouth.equals(UsualMouth.NONE);
    boolean isNoNews = isLeftOut && log.usualVoice().isEmpty();
    return isNoNews || !log.makeUsual(UsualMouth.noted(mouth))
        ? named
        : named.saying(
            isLeftOut
                ? "Takes of this log are measured without a recorded voice from now on."
                : "Takes of this log are measured with this voice from now on, until another is"
                    + " named or --voice none.");
  }

  /** What the device did to the guide of a take, before anything is said of the reciter. */
  private void tell(GuideGaps gaps) {
    if (gaps.count() == 0) {
      return;
    }
    CommandLine line = command.commandLine();
    String times = gaps.count() == 1 ? "once" : gaps.count() + " times";
    double seconds = (double) gaps.frames() / gaps.ratePerSecond();
    (json ? line.getErr() : line.getOut())
        .println(
            Paragraph.of(
                "While this was recorded the sound device had nothing to play "
                    + times
                    + String.format(Locale.ROOT, ", and put in %.2f s of silence;", seconds)
                    + " this time is left out of what is said here."));
  }

  private int compare(
      List<TakeFindings> takes,
      Performance performance,
      TypedDrill typed,
      Optional<String> told,
      PrintWriter out)
      throws IOException {
    if (json) {
      TakeJson.write(takes, performance, typed, told, out);
    } else {
      List<String> names = files.stream().skip(1).map(Path::toString).toList();
      TakeComparison.print(takes, names, performance, out);
    }
    boolean known = takes.stream().allMatch(take -> take.doubt().isEmpty());
    return known ? ExitCode.DONE : ExitCode.CHECK_FAILED;
  }

  /** The rounds that are asked for, or else those that the recording was made with. */
  private Performance rounds(Performance whole) throws IOException {
    if (rounds.isGiven()) {
      return rounds.of(whole);
    }
    return RecordedRounds.of(files.get(1)).map(noted -> noted.in(whole)).orElse(whole);
  }

  private Composition score() {
    Reading reading = ScoreReader.read(files.get(0), lexicon.lexicon());
    PrintWriter err = command.commandLine().getErr();
    reading.problems().forEach(problem -> err.println(problem.format()));
    return reciter.one(reading.composition().orElseThrow(UserError::alreadyTold));
  }
}
