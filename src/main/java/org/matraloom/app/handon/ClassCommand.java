package org.matraloom.app.handon;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.ProgressLine;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.score.TwoReciters;
import org.matraloom.sheet.Booklet;
import org.matraloom.sheet.Sheet;
import org.matraloom.site.Homework;
import org.matraloom.site.SitePages;
import org.matraloom.site.SitePiece;
import org.matraloom.site.SiteStamp;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the whole set of a class. */
@Command(
    name = "class",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Make the whole set of a class from a folder of scores.",
      "Pages for any host or a stick, with contents that can be searched, sheets, breath",
      "plans, a booklet and homework.",
      "Started again it makes only what has changed. A list class.txt in the folder may give",
      "a title, levels, tags and homework (docs/lesson.md)."
    },
    footer = {"", "Example: matraloom class samples-synth -d rain-class --film webm"})
public final class ClassCommand implements Callable<Integer> {

  /** Options that change no file of a piece. */
  private static final Set<String> NO_MATTER =
      Set.of(
          "--plan",
          "--piece",
          "--contents",
          "--output",
          "--folder",
          "--ffmpeg",
          LexiconOptions.NAME);

  @Spec private CommandSpec command;

  @Parameters(paramLabel = "DIR", description = "The folder of the scores.")
  private Path folder;

  @Option(
      names = {"-o", "--output", "-d", "--folder"},
      required = true,
      paramLabel = "SITE",
      description = "The folder of the set; it is made if it does not exist.")
  private Path site;

  @Mixin private ClassOptions options;

  @Mixin private PageContentOptions content;

  @Mixin private LexiconOptions lexicon;

  @Option(
      names = "--plan",
      description = "Print commands, one a line, that make the set in any order or at once.")
  private boolean plan;

  @Option(
      names = "--piece",
      split = ",",
      paramLabel = "NAME",
      description = "Make this piece, or these, only.")
  private List<String> only;

  @Option(names = "--contents", description = "Make contents, homework and booklet only.")
  private boolean contents;

  private boolean failed;

  @Override
  public Integer call() throws IOException {
    ClassFolder from = ClassFolder.read(folder);
    if (from.isHere(site)) {
      throw new UserError(site + " is the folder of the scores; give the set a folder of its own");
    }
    for (String name : only == null ? List.<String>of() : only) {
      if (!from.names().contains(name)) {
        throw new UserError("there is no score " + name + ".loom in " + folder);
      }
    }
    if (plan) {
      from.plan(command.commandLine().getParseResult().originalArgs())
          .forEach(command.commandLine().getOut()::println);
      return ExitCode.DONE;
    }
    PhoneSound.voice(options.who(), lexicon.lexicon());
    refuseOthersPages();
    Files.createDirectories(site);
    Map<String, ClassPiece> pieces = read(from);
    int made = contents ? 0 : make(from, pieces);
    PrintWriter out = command.commandLine().getOut();
    if (only == null) {
      boolean bound = contents(from, pieces);
      out.println(
          site
              + ": "
              + pieces.size()
              + " pieces, "
              + made
              + " made now"
              + (bound ? ", the booklet too" : "")
              + "; open "
              + site.resolve("index.html"));
    } else {
      out.println(site + ": " + only.size() + " of the pieces, " + made + " made now");
    }
    return failed ? ExitCode.BAD_INPUT : ExitCode.DONE;
  }

  private void refuseOthersPages() throws IOException {
    Path index = site.resolve("index.html");
    if (Files.exists(index) && !ClassFolder.isOwnPage(index)) {
      throw new UserError(
          index + " was not made by this program; give the set a folder of its own");
    }
  }

  /** The pieces that can be read; of the others it is told what is wrong. */
  private Map<String, ClassPiece> read(ClassFolder from) {
    Lexicon known = lexicon.lexicon();
    Map<String, ClassPiece> pieces = new LinkedHashMap<>();
    for (String name : only == null ? from.names() : only) {
      Reading reading = ScoreReader.read(from.score(name), known);
      PrintWriter err = command.commandLine().getErr();
      reading.problems().forEach(problem -> err.println(problem.format()));
      Optional<Composition> piece = reading.composition();
      if (piece.isPresent() && TwoReciters.in(piece.get())) {
        err.println(
            from.score(name) + ": has two reciters and is left out; a class takes one a piece");
        piece = Optional.empty();
      }
      failed |= piece.isEmpty();
      piece.ifPresent(
          read ->
              pieces.put(
                  name,
                  new ClassPiece(
                      name,
                      Performance.of(read),
                      from.list().entry(name),
                      known,
                      options,
                      content)));
    }
    return pieces;
  }

  private int make(ClassFolder from, Map<String, ClassPiece> pieces) throws IOException {
    List<Callable<Void>> work = new ArrayList<>();
    for (Map.Entry<String, ClassPiece> piece : pieces.entrySet()) {
      Path target = site.resolve(piece.getKey());
      SiteStamp stamp = piece.getValue().stamp(texts(from, piece.getKey()));
      if (!stamp.isIn(target)) {
        work.add(
            () -> {
              Files.createDirectories(target);
              try {
                piece.getValue().make(target, stamp);
              } catch (UserError refused) {
                throw new UserError(from.score(piece.getKey()) + ": " + refused.getMessage());
              }
              return null;
            });
      }
    }
    SideWork.all(work, new ProgressLine(command.commandLine().getErr()));
    return work.size();
  }

  /** All that goes into a piece: what was asked for, the score, what is said of it. */
  private List<String> texts(ClassFolder from, String name) throws IOException {
    List<String> texts = new ArrayList<>();
    for (OptionSpec option : command.commandLine().getParseResult().matchedOptions()) {
      if (!NO_MATTER.contains(option.longestName())) {
        texts.add(option.longestName() + "=" + option.getValue());
      }
    }
    Collections.sort(texts);
    texts.add(from.list().entry(name).toString());
    texts.add(Files.readString(from.score(name)));
    if (lexicon.file().isPresent()) {
      texts.add(Files.readString(lexicon.file().get()));
    }
    return texts;
  }

  /** Contents, homework and booklet; gives whether the booklet was made anew. */
  private boolean contents(ClassFolder from, Map<String, ClassPiece> pieces) throws IOException {
    Map<String, SitePiece> shown = new LinkedHashMap<>();
    List<String> texts = new ArrayList<>(List.of(from.title()));
    for (Map.Entry<String, ClassPiece> piece : pieces.entrySet()) {
      shown.put(piece.getKey(), piece.getValue().onSite());
      texts.add(piece.getValue().stamp(texts(from, piece.getKey())).text());
    }
    List<Homework> tasks =
        from.list().homework().stream().filter(task -> shown.containsKey(task.piece())).toList();
    String index = SitePages.contents(from.title(), List.copyOf(shown.values()), !tasks.isEmpty());
    WholeFile.writeText(site.resolve("index.html"), file -> file.append(index));
    if (!tasks.isEmpty()) {
      String cards = SitePages.homework(from.title(), tasks, shown);
      WholeFile.writeText(site.resolve("homework.html"), file -> file.append(cards));
    }
    SiteStamp stamp = SiteStamp.of(texts, List.of("booklet.pdf"));
    if (pieces.isEmpty() || stamp.isIn(site)) {
      return false;
    }
    List<Sheet> sheets = pieces.values().stream().map(ClassPiece::sheet).toList();
    WholeFile.write(
        site.resolve("booklet.pdf"), file -> new Booklet(from.title(), sheets).writePdf(file));
    WholeFile.writeText(site.resolve(SiteStamp.FILE_NAME), file -> file.append(stamp.text()));
    return true;
  }
}
