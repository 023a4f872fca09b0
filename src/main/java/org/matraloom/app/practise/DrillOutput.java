package org.matraloom.app.practise;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.matraloom.app.cli.DroneOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.FormatOptions;
import org.matraloom.app.cli.MixOptions;
import org.matraloom.app.cli.TimelineOptions;
import org.matraloom.app.cli.TrackOutput;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.kanakku.Remarks;
import org.matraloom.kanakku.SpeechRate;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.sound.Mix;
import org.matraloom.sound.Passage;
import org.matraloom.spell.ScorePrinter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where a drill goes and how it sounds. */
final class DrillOutput {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "OUT.wav",
      description = "The sound file to write; an older one is replaced.")
  private Path output;

  @Option(
      names = "--score",
      paramLabel = "OUT.loom",
      description = "The score to write; an older one is replaced.")
  private Path score;

  @Mixin private TimelineOptions timeline;

  @Mixin private MixOptions mix;

  @Mixin private DroneOptions drone;

  @Mixin private VoiceOptions voice;

  @Mixin private FormatOptions format;

  /** A drill of one composition, as it is. */
  MadeDrill made(Composition drill) {
    return made(drill, drill.title(), List.of(drill), Function.identity(), mix.mix());
  }

  /** A drill of one passage for each composition, each timeline changed by the drill. */
  MadeDrill made(
      Composition written,
      String what,
      List<Composition> passages,
      Function<Timeline, Timeline> change,
      Mix sound) {
    List<Passage> heard =
        passages.stream()
            .map(passage -> new Passage(change.apply(timeline.timeline(passage)), sound))
            .toList();
    Optional<String> remark =
        Remarks.onFastest(
            passages.stream().map(Performance::of).toList(), SpeechRate.VERY_HARD_PER_SECOND);
    return new MadeDrill(
        written, what, heard, remark, timeline.countInAvartanas(), drone.sruti(), format.format());
  }

  /** Writes the files that are named; without any the score is printed. */
  int write(MadeDrill drill) throws IOException {
    if (output == null && score == null) {
      command.commandLine().getOut().print(ScorePrinter.print(drill.written()));
    }
    writeNamed(drill);
    return ExitCode.DONE;
  }

  /**
   * Writes the files that are named, and tells what is very hard or impossible to say in the drill.
   */
  void writeNamed(MadeDrill drill) throws IOException {
    PrintWriter err = command.commandLine().getErr();
    drill.remark().ifPresent(remark -> err.println("Note: " + remark + "."));
    if (score != null) {
      WholeFile.writeText(score, text -> text.append(ScorePrinter.print(drill.written())));
    }
    if (output != null) {
      new TrackOutput(
              command.commandLine().getOut(),
              command.commandLine().getErr(),
              rate -> voice.voice(rate, Lexicon.standard()))
          .write(drill.passages(), "(" + drill.what() + ")", drill.sruti(), drill.format(), output);
      voice.tellInstead(err);
    }
  }

  Mix mix() {
    return mix.mix();
  }
}
