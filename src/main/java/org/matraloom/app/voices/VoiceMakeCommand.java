package org.matraloom.app.voices;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.GivenText;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.mouth.CueSheet;
import org.matraloom.mouth.KitDraft;
import org.matraloom.mouth.KitException;
import org.matraloom.mouth.KitHead;
import org.matraloom.mouth.KitMaker;
import org.matraloom.mouth.KitZip;
import org.matraloom.recording.RecordingException;
import org.matraloom.score.Lexicon;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a voice of recordings, or of a file that was shared. */
@Command(
    name = "make",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Make a voice of recordings of a list of sollus, or of a shared voice (.zip).",
      "A cue sheet says what was spoken: words as in a score, a row on a line, in order;",
      "before a word, if you like, when it begins: 12.4 or 1:12.4. Its usual name is that",
      "of the recording with .txt. One sheet for several recordings: each is a take of it."
    },
    footer = {
      "",
      "Example: matraloom voice make river list.wav --cue list.txt --owner \"Mira\" --consent"
    })
final class VoiceMakeCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(index = "0", paramLabel = "NAME", description = "What the voice is to be called.")
  private String name;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "RECORDING",
      description = "Recordings of any kind that take reads, or one shared voice.")
  private List<Path> recordings;

  @Option(
      names = "--cue",
      paramLabel = "SHEET",
      description = "What was spoken; one for all recordings, or one for each.")
  private List<Path> sheets = List.of();

  @Mixin private ConsentOptions owner;

  @Option(names = "--replace", description = "Replace a voice of that name.")
  private boolean replace;

  @Mixin private ShelfOptions shelf;

  @Mixin private LexiconOptions lexicon;

  @Override
  public Integer call() throws IOException {
    ShelfOptions.requireName(name);
    if (shelf.shelf().has(name) && !replace) {
      throw new UserError("there is a voice " + name + " already; take another name, or --replace");
    }
    PrintWriter out = command.commandLine().getOut();
    try {
      KitDraft draft = isShared() ? KitZip.read(recordings.get(0), name) : made();
      shelf.shelf().put(draft);
      new KitTable(draft.kit()).printMade(draft.missing(), shelf, out);
    } catch (KitException | RecordingException wrong) {
      throw new UserError(wrong.getMessage());
    } catch (NoSuchFileException absent) {
      throw new UserError("there is no file " + absent.getFile() + "; check the name");
    }
    return ExitCode.DONE;
  }

  private boolean isShared() throws IOException {
    return recordings.size() == 1 && KitZip.isZip(recordings.get(0));
  }

  private KitDraft made() throws IOException {
    if (sheets.size() > 1 && sheets.size() != recordings.size()) {
      throw new UserError(
          "--cue was given "
              + sheets.size()
              + " times for "
              + recordings.size()
              + " recordings; give one for all, or one for each");
    }
    Lexicon known = lexicon.lexicon();
    List<CueSheet> cues = new ArrayList<>();
    for (int i = 0; i < recordings.size(); i++) {
      cues.add(sheet(i, known));
    }
    String agreed = owner.agreed(command.commandLine().getOut());
    KitMaker maker = new KitMaker(known);
    for (int i = 0; i < recordings.size(); i++) {
      maker.add(recordings.get(i), cues.get(i));
    }
    return maker.draft(new KitHead(name, owner.owner(), owner.terms(), agreed));
  }

  private CueSheet sheet(int recording, Lexicon known) throws IOException {
    Path file =
        sheets.isEmpty()
            ? beside(recordings.get(recording))
            : sheets.get(sheets.size() == 1 ? 0 : recording);
    if (!Files.isRegularFile(file)) {
      throw new UserError(
          "there is no cue sheet " + file + "; write what was spoken and name it with --cue");
    }
    return CueSheet.read(GivenText.read("the cue sheet", file), file.toString(), known);
  }

  private static Path beside(Path recording) {
    String file = recording.getFileName().toString();
    int dot = file.lastIndexOf('.');
    return recording.resolveSibling((dot > 0 ? file.substring(0, dot) : file) + ".txt");
  }
}
