package org.matraloom.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.matraloom.notation.ScorePrinter;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.sound.Mix;
import org.matraloom.sound.Passage;
import org.matraloom.sound.PcmFormat;
import org.matraloom.sound.Sruti;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where a drill goes and how it sounds. */
final class DrillOutput {

  /** Takes the sound of a drill in place of a file. */
  @FunctionalInterface
  interface Listener {
    /**
     * Takes a drill.
     *
     * @param passages what is heard, one after another
     * @param countInAvartanas avartanas counted before each
     * @param sruti the tonic of a drone
     * @param format how samples are handed on
     */
    void hear(
        List<Passage> passages, int countInAvartanas, Optional<Sruti> sruti, PcmFormat format);
  }

  private final Optional<Listener> listener;

  /** Writes to the files that are named. */
  DrillOutput() {
    this.listener = Optional.empty();
  }

  /** Hands every drill to a listener. */
  DrillOutput(Listener listener) {
    this.listener = Optional.of(listener);
  }

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

  /** Takes what the practice package makes, and its refusals as the user's error. */
  static <T> T asked(Supplier<T> drill) {
    try {
      return drill.get();
    } catch (IllegalArgumentException refused) {
      throw new UserError(refused.getMessage());
    }
  }

  int write(Composition drill) throws IOException {
    return write(drill, drill.title(), List.of(drill), Function.identity(), mix.mix());
  }

  /** Writes one passage for each composition, each timeline changed by the drill. */
  int write(
      Composition written,
      String what,
      List<Composition> passages,
      Function<Timeline, Timeline> change,
      Mix sound)
      throws IOException {
    List<Passage> heard =
        passages.stream()
            .map(passage -> new Passage(change.apply(timeline.timeline(passage)), sound))
            .toList();
    listener.ifPresent(
        taking -> taking.hear(heard, timeline.countInAvartanas(), drone.sruti(), format.format()));
    if (output == null && score == null && listener.isEmpty()) {
      command.commandLine().getOut().print(ScorePrinter.print(written));
    }
    if (score != null) {
      WholeFile.writeText(score, text -> text.append(ScorePrinter.print(written)));
    }
    if (output != null) {
      new TrackOutput(
              command.commandLine().getOut(),
              command.commandLine().getErr(),
              rate -> voice.voice(rate, Lexicon.standard()))
          .write(heard, "(" + what + ")", drone.sruti(), format.format(), output);
    }
    return ExitCode.DONE;
  }

  Mix mix() {
    return mix.mix();
  }
}
