package org.matraloom.app.voices;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.PictureFile;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.mouth.Kit;
import org.matraloom.mouth.KitGaps;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.SolluSound;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what a voice has, what is doubtful and what it lacks. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Show what a voice has, what is doubtful, and what is missing for some scores.",
      "Without a score: what is missing of all sollus that are known."
    },
    footer = {"", "Example: matraloom voice check river samples-synth/gutter-song.loom"})
final class VoiceCheckCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(index = "0", paramLabel = "NAME", description = "The voice.")
  private String name;

  @Parameters(index = "1..*", arity = "0..*", paramLabel = "SCORE", description = "Scores.")
  private List<Path> scores = List.of();

  @Option(
      names = "--picture",
      paramLabel = "OUT.png",
      description = "Draw every sample with its places, as .svg or .png.")
  private Path picture;

  @Mixin private ShelfOptions shelf;

  @Mixin private LexiconOptions lexicon;

  @Override
  public Integer call() throws IOException {
    if (picture != null) {
      PictureFile.requireEnding(picture);
    }
    Kit kit = shelf.open(name);
    Lexicon known = lexicon.lexicon();
    PrintWriter out = command.commandLine().getOut();
    KitTable table = new KitTable(kit);
    table.printSum(out);
    table.printSollus(out);
    table.printDoubts(out);
    TreeSet<String> asked = scores.isEmpty() ? all(known) : said(known);
    KitGaps gaps = KitGaps.of(kit, asked, known);
    if (gaps.isEmpty()) {
      out.println("Nothing is missing.");
    }
    tell(out, "Said by another sollu of this voice: ", gaps.byNearest());
    tell(out, "Said by the synthesiser: ", gaps.bySynthesiser());
    if (picture != null) {
      PictureFile.write(KitPicture.of(kit, shelf.shelf().folderOf(name)), picture);
      out.println(picture);
    }
    return ExitCode.DONE;
  }

  private static void tell(PrintWriter out, String what, List<String> sollus) {
    if (!sollus.isEmpty()) {
      out.println(Paragraph.folded(what + String.join(", ", sollus) + "."));
    }
  }

  private static TreeSet<String> all(Lexicon lexicon) {
    TreeSet<String> names = new TreeSet<>();
    lexicon.sounds().stream().map(SolluSound::name).forEach(names::add);
    return names;
  }

  private TreeSet<String> said(Lexicon known) {
    TreeSet<String> names = new TreeSet<>();
    List<Performance> read = new ArrayList<>();
    for (Path score : scores) {
      read.add(Performance.of(ScoreOptions.read(score, known, command.commandLine().getErr())));
    }
    for (Performance performance : read) {
      ScoreTimeline.of(performance, 0)
          .forEach(
              event -> {
                if (event instanceof Event.SolluSaid said) {
                  names.add(said.sollu().sound());
                }
              });
    }
    return names;
  }
}
