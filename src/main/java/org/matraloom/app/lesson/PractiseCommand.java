package org.matraloom.app.lesson;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import org.matraloom.app.cli.DeviceOptions;
import org.matraloom.app.cli.DroneOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.InputOption;
import org.matraloom.app.cli.LeadInOptions;
import org.matraloom.app.cli.LogOptions;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.app.hear.UsualMouth;
import org.matraloom.device.SoundDevices;
import org.matraloom.kanakku.SpeechRate;
import org.matraloom.log.PracticeLog;
import org.matraloom.log.VoicedTime;
import org.matraloom.onset.KnownSounds;
import org.matraloom.score.Composition;
import org.matraloom.session.PracticeDesk;
import org.matraloom.sound.SrutiDrone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A practice session that plays, listens, decides and goes on by itself. */
@Command(
    name = "practise",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Practise with a partner that plays, listens, decides and goes on by itself.",
      "Each pass is recorded and measured, one thing is said of it, and the next pass begins faster,",
      "slower, or at the place that went wrong.",
      "Wear headphones, or the guide is recorded as well."
    },
    footer = {
      "",
      "Two clean passes lead up, one miss leads down. At the goal the voice, the ticks, the counts",
      "and then some of the claps fall silent. Two taps say up, one low tone says down.",
      "q or space ends it; each take is kept, and each pass is noted in the practice log.",
      "Example: matraloom practise samples-synth/gutter-song.loom --to 80",
      "Warm up, begin softly, rest after a quarter of an hour of voice, and stop on pain.",
      LogOptions.WHERE
    })
public final class PractiseCommand implements Callable<Integer> {

  private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");
  private static final int MOST_MINUTES = 240;
  private static final int RATE = 48_000;

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(
      names = "--to",
      paramLabel = "BPM",
      description = "The goal, in whole beats a minute (the tempo of the score if not given).")
  private Integer goal;

  @Option(
      names = "--from",
      paramLabel = "BPM",
      description = "Where to begin (what the practice log says, or 4/5 of the goal).")
  private Integer from;

  @Option(
      names = "--minutes",
      paramLabel = "N",
      defaultValue = "15",
      description = "How long, 1 to " + MOST_MINUTES + " (default ${DEFAULT-VALUE}).")
  private int minutes;

  @Option(
      names = "--clear-at",
      paramLabel = "RATE",
      description =
          "The limit of your mouth, in matras a second, 1 to 20 (fastest in your list of sollus, or "
              + SpeechRate.VERY_HARD_PER_SECOND
              + ").")
  private Double clearRate;

  @Option(names = "--whole", description = "Begin with the whole, without words, joins, sections.")
  private boolean whole;

  @Option(names = "--explain", description = "Say why each step was chosen.")
  private boolean explain;

  @Option(
      names = "--mouth",
      paramLabel = "NAME",
      description = {
        "Who recites: a recorded voice, whose sollus the ear then knows beforehand, or none",
        "(the usual one of the practice log, see matraloom take --voice)."
      })
  private String mouth;

  @Option(
      names = {"-o", "--output", "-d", "--folder"},
      paramLabel = "FOLDER",
      description = "A new folder for the takes (named after the score and the time).")
  private Path folder;

  @Option(names = "--no-log", description = "Note nothing in the practice log.")
  private boolean noLog;

  @Mixin private LogOptions log;

  @Mixin private LeadInOptions leadIn;

  @Mixin private DroneOptions drone;

  @Mixin private VoiceOptions voice;

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
    Composition composition = score.read();
    if (minutes < 1 || minutes > MOST_MINUTES) {
      throw new UserError("--minutes takes 1 to " + MOST_MINUTES + ", given " + minutes);
    }
    Optional<PracticeLog> noted = noLog ? Optional.empty() : Optional.of(log.log());
    LessonOrder order =
        new LessonOrder(
            composition,
            score.lexicon(),
            new LessonOrder.Tempi(
                Optional.ofNullable(goal),
                Optional.ofNullable(from),
                Optional.ofNullable(clearRate)),
            whole,
            explain,
            target(),
            noted,
            leadIn.avartanas());
    order.settings();
    KnownSounds known = known(noted, out);
    DevicePlayer.Devices devices =
        new DevicePlayer.Devices(SoundDevices.find(), device.device(), input.input(), RATE);
    devices.roundTripFrames();
    Lesson.End end;
    try (PracticeDesk desk = PracticeDesk.open(plain, out, System.in)) {
      DevicePlayer player =
          new DevicePlayer(
              devices,
              new DevicePlayer.Guide(
                  voice.voice(RATE, score.lexicon()),
                  drone.sruti().map(tonic -> new SrutiDrone(tonic, RATE))),
              desk,
              score.lexicon(),
              new PassEar(score.lexicon(), known));
      end = order.lesson(player, known).run(TimeUnit.MINUTES.toSeconds(minutes), System::nanoTime);
    }
    tell(end, order.folder(), out);
    remind(noted, out);
    return end.isBroken() ? ExitCode.MACHINE : ExitCode.DONE;
  }

  private KnownSounds known(Optional<PracticeLog> noted, PrintWriter out) throws IOException {
    if (mouth != null) {
      return UsualMouth.named(mouth, score.lexicon()).sounds();
    }
    Optional<String> usual = noted.isPresent() ? noted.get().read().usualVoice() : Optional.empty();
    UsualMouth found = UsualMouth.ofLog(usual, score.lexicon(), "--mouth " + UsualMouth.NONE);
    found.told().ifPresent(words -> out.println(Paragraph.of(words)));
    return found.sounds();
  }

  private Path target() {
    String name = score.file().getFileName().toString().replaceAll("\\.loom$", "");
    Path target = folder == null ? Path.of(name + "-" + LocalDateTime.now().format(STAMP)) : folder;
    if (Files.exists(target)) {
      throw new UserError(target + " exists already; give the name of a new folder");
    }
    return target;
  }

  private static void tell(Lesson.End end, Path folder, PrintWriter out) {
    out.println(Paragraph.of(end.why()));
    end.summary().forEach(line -> out.println(Paragraph.of(line)));
    out.println("Takes and decisions: " + folder);
  }

  private static void remind(Optional<PracticeLog> noted, PrintWriter out) throws IOException {
    if (noted.isPresent()) {
      VoicedTime.of(noted.get().read(), OffsetDateTime.now())
          .reminder()
          .ifPresent(words -> out.println(Paragraph.of(words)));
    }
  }
}
