package org.matraloom.app.voices;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.matraloom.app.cli.DeviceOptions;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.InputOption;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.device.SoundDevices;
import org.matraloom.mouth.CueSheet;
import org.matraloom.mouth.KitDraft;
import org.matraloom.mouth.KitException;
import org.matraloom.mouth.KitHead;
import org.matraloom.mouth.KitMaker;
import org.matraloom.prompt.AskedRow;
import org.matraloom.prompt.Asking;
import org.matraloom.prompt.RowFolder;
import org.matraloom.prompt.RowList;
import org.matraloom.prompt.RowSheet;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.session.RowDesk;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Asks for the sollus row by row, records them, and makes a voice of them. */
@Command(
    name = "record",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Record a voice: the program asks for the sollus row by row, in words and alone.",
      "Each row is heard once, on a clap and three counts of the hand; then say it",
      "three times as the hand goes on. What was clipped, too soft or not heard is",
      "asked for again, with the reason. Broken off, the same command goes on where it",
      "stopped."
    },
    footer = {
      "",
      "Keys: a again, s skip this row, p or space pause, q end; all is kept.",
      "Example: matraloom voice record river --owner \"Mira\" --for samples-synth",
      "Wear headphones, or the claps are in the voice. Begin rested, with water beside",
      "you; speak as in a lesson, at one pitch. Rest when the voice tires; stop if it",
      "hurts or you are hoarse, and see a professional if that stays."
    })
final class VoiceRecordCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Parameters(index = "0", paramLabel = "NAME", description = "What the voice is to be called.")
  private String name;

  @Option(
      names = "--for",
      paramLabel = "FILE",
      description = "Only the sollus of this score, or of all scores in this folder.")
  private Path scores;

  @Mixin private ConsentOptions owner;

  @Option(names = "--replace", description = "Replace a voice of that name when all is recorded.")
  private boolean replace;

  @Option(names = "--anew", description = "Forget the rows that were recorded before.")
  private boolean anew;

  @Mixin private ShelfOptions shelf;

  @Mixin private LexiconOptions lexicon;

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
    ShelfOptions.requireName(name);
    if (shelf.shelf().has(name) && !replace) {
      throw new UserError("there is a voice " + name + " already; take another name, or --replace");
    }
    Lexicon known = lexicon.lexicon();
    RowFolder folder = new RowFolder(shelf.rows(name), known);
    begin(folder, known, out);
    boolean isWhole;
    List<String> missing;
    int kept;
    SoundDevices devices = SoundDevices.find();
    devices.outName(device.device());
    devices.inName(input.input());
    try (RowDesk desk = RowDesk.open(plain, out, System.in)) {
      RowRecorder recorder = new RowRecorder(devices, device.device(), input.input(), known, desk);
      RowSession session = new RowSession(folder, recorder::record, desk);
      isWhole = session.run();
      missing = session.missing();
      kept = session.kept();
    }
    if (!isWhole) {
      out.println(kept + " sayings are kept in " + folder.path());
      out.println("Go on: matraloom voice record " + name);
      return ExitCode.DONE;
    }
    if (kept == 0) {
      throw new UserError("no row was said so that it can be used; see what was told of each");
    }
    make(folder, known, missing, out);
    return ExitCode.DONE;
  }

  /** Tells what will be asked, and asks for consent; or tells that it goes on. */
  private void begin(RowFolder folder, Lexicon known, PrintWriter out) throws IOException {
    if (folder.isBegun() && !anew) {
      out.println("Going on with " + folder.path() + "; --anew begins anew.");
    } else {
      List<AskedRow> rows = rows(known);
      out.println(
          Paragraph.folded(
              String.format(
                  Locale.ROOT,
                  "%d rows, each heard once and said %d times: about %d minutes with rests."
                      + " Headphones on, water beside you; stop if it hurts.",
                  rows.size(),
                  Asking.TAKES,
                  RowList.minutes(rows.size(), rows.size() * Asking.TAKES))));
      String agreed = owner.agreed(out);
      folder.remove();
      folder.begin(new RowFolder.Head(owner.owner(), owner.terms(), agreed), rows);
    }
    out.flush();
  }

  private List<AskedRow> rows(Lexicon known) throws IOException {
    RowList list = new RowList(known);
    if (scores == null) {
      return list.common();
    }
    if (!Files.exists(scores)) {
      throw new UserError("there is no score or folder " + scores + "; check the name");
    }
    List<Composition> read = new ArrayList<>();
    for (Path file : files()) {
      read.add(ScoreOptions.read(file, known, command.commandLine().getErr()));
    }
    List<AskedRow> rows = list.of(read);
    if (rows.isEmpty()) {
      throw new UserError("nothing is said in " + scores + "; is there a .loom file in it?");
    }
    return rows;
  }

  private List<Path> files() throws IOException {
    if (!Files.isDirectory(scores)) {
      return List.of(scores);
    }
    try (Stream<Path> inside = Files.list(scores)) {
      return inside.filter(file -> file.toString().endsWith(".loom")).sorted().toList();
    }
  }

  private void make(RowFolder folder, Lexicon known, List<String> missing, PrintWriter out)
      throws IOException {
    KitMaker maker = new KitMaker(known);
    RowFolder.Head head = folder.head();
    try {
      for (int row = 0; row < folder.rows().size(); row++) {
        for (Path recording : folder.recordings(row)) {
          if (RowSheet.good(recording) > 0) {
            Path sheet = RowSheet.of(recording);
            maker.add(recording, CueSheet.read(Files.readString(sheet), sheet.toString(), known));
          }
        }
      }
      KitDraft draft = maker.draft(new KitHead(name, head.owner(), head.terms(), head.consent()));
      shelf.shelf().put(draft);
      new KitTable(draft.kit()).printMade(draft.missing(), shelf, out);
    } catch (KitException wrong) {
      throw new UserError(wrong.getMessage());
    }
    if (!missing.isEmpty()) {
      out.println(
          Paragraph.folded(
              "Not recorded: "
                  + String.join("; ", missing)
                  + ". To be asked once more: matraloom voice record "
                  + name
                  + " --replace"));
    }
    out.println("The rows are kept in " + folder.path());
  }
}
