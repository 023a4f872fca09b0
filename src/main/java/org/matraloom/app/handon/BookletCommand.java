package org.matraloom.app.handon;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.ReciterOption;
import org.matraloom.app.cli.SheetOutput;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.score.Performance;
import org.matraloom.sheet.Booklet;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetOptions;
import org.matraloom.sheet.Trikala;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the sheets of several pieces as one file with contents. */
@Command(
    name = "booklet",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Write the pages of several pieces in one file, after a list of contents.",
      "As .pdf or .html; the pieces stand in the order in which they are named."
    },
    footer = {"", "Example: matraloom booklet samples-synth/*.loom -o rain.pdf --title \"Rain\""})
public final class BookletCommand implements Callable<Integer> {

  private static final int MOST_PIECES = 200;

  @Spec private CommandSpec command;

  @Parameters(paramLabel = "SCORE", arity = "1..*", description = "The scores (.loom).")
  private List<Path> files;

  @Option(
      names = {"-o", "--output"},
      required = true,
      paramLabel = "OUT",
      description = "The file to write, .pdf or .html; an older one is replaced.")
  private Path output;

  @Option(names = "--title", paramLabel = "TEXT", description = "What stands on the first page.")
  private String title = "Contents";

  @Mixin private LexiconOptions lexicon;

  @Mixin private SheetContentOptions content;

  @Override
  public Integer call() throws IOException {
    String ending = SheetOutput.endingOf(output);
    boolean html = ending.equals("html") || ending.equals("htm");
    if (!html && !ending.equals("pdf")) {
      throw new UserError(output + ": a booklet is written as .pdf or .html");
    }
    if (files.size() > MOST_PIECES) {
      throw new UserError(
          "a booklet holds at most " + MOST_PIECES + " pieces, given " + files.size());
    }
    List<Sheet> sheets = new ArrayList<>();
    for (Path file : files) {
      sheets.add(sheet(file));
    }
    Booklet booklet = new Booklet(title, sheets);
    if (html) {
      WholeFile.writeText(output, booklet::writeHtml);
    } else {
      WholeFile.write(output, booklet::writePdf);
    }
    command.commandLine().getOut().println(output);
    return ExitCode.DONE;
  }

  private Sheet sheet(Path file) throws IOException {
    if (Files.exists(output) && Files.exists(file) && Files.isSameFile(file, output)) {
      throw new UserError(output + " is one of the scores; give the booklet another name");
    }
    Reading reading = ScoreReader.read(file, lexicon.lexicon());
    reading.problems().forEach(problem -> command.commandLine().getErr().println(problem.format()));
    Performance performance =
        Performance.of(
            ReciterOption.requireOne(
                reading.composition().orElseThrow(UserError::alreadyTold), "a booklet"));
    SheetOptions options = content.options(performance, lexicon.lexicon());
    return options.lines() == SheetOptions.Lines.SPEEDS
        ? Trikala.of(performance, options)
        : content.sheet(performance, lexicon.lexicon());
  }
}
