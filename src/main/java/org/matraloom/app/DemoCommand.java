package org.matraloom.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.matraloom.kanakku.Landing;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.sound.FormantVoice;
import org.matraloom.sound.Mix;
import org.matraloom.sound.Part;
import org.matraloom.sound.PcmFormat;
import org.matraloom.sound.VoiceSettings;
import org.matraloom.time.Ratio;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The whole job on the piece that comes with the program. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    description = "Do the whole job on a piece that comes with the program.",
    footer = {"", "Example: matraloom demo --folder river-demo"})
final class DemoCommand implements Callable<Integer> {

  private static final Ratio SLOW = Ratio.of(3, 4);

  @Spec private CommandSpec command;

  @Option(
      names = "--folder",
      paramLabel = "DIR",
      defaultValue = "matraloom-demo",
      description = "Where the files go (default ${DEFAULT-VALUE}).")
  private Path folder;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    Files.createDirectories(folder);
    Path score = folder.resolve(DemoScore.FILE);
    Files.writeString(score, DemoScore.text(), StandardCharsets.UTF_8);

    out.println("1. The piece, as written in " + score + ":");
    out.println();
    DemoScore.text().lines().forEach(line -> out.println("    " + line));
    out.println();

    out.println("2. Does it land?");
    out.println();
    Composition composition = DemoScore.read();
    Landing landing = Landing.of(Performance.of(composition));
    new LandingText(landing).print(out);
    out.println();

    out.println("3. Practice tracks, with an avartana counted in:");
    TrackOutput tracks =
        new TrackOutput(
            out,
            command.commandLine().getErr(),
            rate -> new FormantVoice(rate, Lexicon.standard(), VoiceSettings.USUAL));
    Composition slow = composition.at(composition.tempo().scaled(SLOW));
    write(tracks, slow, Mix.lesson(), "1-slow-with-everything.wav");
    write(tracks, composition, Mix.practice().without(EnumSet.of(Part.TICK)), "2-no-ticks.wav");
    Mix handsOnly = Mix.practice().without(EnumSet.of(Part.TICK, Part.VOICE));
    write(tracks, composition, handsOnly, "3-hands-only.wav");
    out.println();
    out.println("Keep the level low when you listen. Change the score and check it again:");
    out.println("    matraloom check " + score);
    return landing.lands() ? ExitCode.DONE : ExitCode.CHECK_FAILED;
  }

  private void write(TrackOutput tracks, Composition composition, Mix mix, String name)
      throws IOException {
    ScoreTimeline timeline = ScoreTimeline.of(Performance.of(composition), 1);
    tracks.write(timeline, mix, Optional.empty(), PcmFormat.USUAL, folder.resolve(name));
  }
}
