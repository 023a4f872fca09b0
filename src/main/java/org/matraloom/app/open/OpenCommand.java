package org.matraloom.app.open;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.LogOptions;
import org.matraloom.app.cli.Program;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.VoiceOptions;
import org.matraloom.device.UserFolders;
import org.matraloom.door.Door;
import org.matraloom.door.DoorKeys;
import org.matraloom.shelf.SavedText;
import org.matraloom.shelf.ScoreFolder;
import org.matraloom.shelf.ScoreName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens the page on which everything is done that the other commands do. */
@Command(
    name = "open",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Open a folder of scores in the browser: write, prove, hear, say, hand on.",
      "The page is served to this machine only, and nothing is fetched from elsewhere.",
      "Ctrl-C ends it, after what is being written is on the disk."
    },
    footer = {
      "",
      "Start with a low level, above all with headphones.",
      "Example: matraloom open samples-synth"
    })
public final class OpenCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(
      paramLabel = "FOLDER or FILE",
      arity = "0..1",
      defaultValue = ".",
      description = "A folder of scores, or one score in it (this folder if not given).")
  private Path place;

  @Option(names = "--no-browser", description = "Only print the address.")
  private boolean quiet;

  @Option(
      names = "--voice",
      paramLabel = "WHO",
      defaultValue = VoiceOptions.USUAL,
      description = VoiceOptions.WHO)
  private String who;

  @Mixin private LexiconOptions lexicon;

  @Mixin private LogOptions log;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = command.commandLine().getOut();
    Optional<ScoreName> first = first();
    PlayedPieces.voice(who, lexicon.lexicon());
    Path folder = first.isPresent() ? place.toAbsolutePath().getParent() : place;
    ScoreFolder scores = new ScoreFolder(folder, kept(folder), Clock.systemUTC());
    OpenDesk desk =
        new OpenDesk(
            scores, lexicon.lexicon(), log.log(), (Program) command.root().userObject(), who);
    Path file = kept(folder).resolve("door");
    DoorKeys before = DoorKeys.kept(file);
    try (Door door =
        Door.open(before, OpenRoutes.of(desk, first), address -> another(address, out))) {
      // Where the old port is taken, a program that is still open on this folder needs its keys.
      boolean alone = before.port() == 0 || before.port() == door.keys().port();
      if (alone) {
        door.keys().keep(file);
      }
      out.println("Matraloom shows " + scores.folder() + " at");
      out.println(door.address());
      out.println("Ctrl-C ends it.");
      out.flush();
      if (!quiet) {
        Browser.open(door.address());
      }
      WarmStart.begin(desk);
      untilTheEnd(door);
    }
    return ExitCode.DONE;
  }

  private static void another(String address, PrintWriter out) {
    out.println("For one more page: " + address);
    out.flush();
  }

  private Optional<ScoreName> first() {
    if (!Files.exists(place)) {
      throw new UserError("there is no folder and no score " + place + "; check the name");
    }
    return Files.isDirectory(place)
        ? Optional.empty()
        : Optional.of(new ScoreName(place.getFileName().toString()));
  }

  /** Where versions, the bin and the keys of a folder are. */
  private static Path kept(Path folder) throws IOException {
    String stamp = SavedText.of(folder.toRealPath().toString()).stamp();
    return UserFolders.data().resolve("open").resolve(stamp);
  }

  /** Waits for Ctrl-C, or for whoever else ends the program. */
  private static void untilTheEnd(Door door) {
    CountDownLatch end = new CountDownLatch(1);
    Thread closing = new Thread(door::close, "matraloom-closing");
    Runtime.getRuntime().addShutdownHook(closing);
    try {
      end.await();
    } catch (InterruptedException asked) {
      Runtime.getRuntime().removeShutdownHook(closing);
    }
  }
}
