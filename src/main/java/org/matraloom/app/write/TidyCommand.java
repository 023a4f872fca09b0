package org.matraloom.app.write;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.LexiconOptions;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.app.cli.ShellWord;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.notation.Reading;
import org.matraloom.notation.ScoreReader;
import org.matraloom.pasted.PastedText;
import org.matraloom.pasted.TidyScore;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a score of a text as people send it. */
@Command(
    name = "tidy",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Make a clean score of a text as people send it, and say what was guessed.",
      "It understands line numbers, totals in brackets, bars and slashes, dashes,",
      "capitals, repeats, names before lines, tala and tempo."
    },
    footer = {"", "Example: matraloom tidy message.txt -o song.loom"})
public final class TidyCommand implements Callable<Integer> {

  private static final int MOST_BYTES = 1_000_000;
  private static final String STANDARD_INPUT = "-";

  @Spec private CommandSpec command;

  @Parameters(paramLabel = "TEXT", description = "A text file, or - for what is typed or pasted.")
  private Path text;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "OUT.loom",
      description = "The score to write; without it the score is printed.")
  private Path output;

  @Mixin private LexiconOptions lexicon;

  @Override
  public Integer call() throws IOException {
    if (output != null) {
      refuseToWriteOver();
    }
    String pasted = pasted();
    Reading asItIs = ScoreReader.read(pasted, text.toString(), lexicon.lexicon());
    if (asItIs.composition().isPresent() && asItIs.problems().isEmpty()) {
      throw new UserError(text + " is a clean score already: there is nothing to tidy");
    }
    TidyScore tidy = UserError.unlessRefused(() -> PastedText.tidy(pasted, lexicon.lexicon()));
    PrintWriter out = command.commandLine().getOut();
    if (output == null) {
      out.print(tidy.score());
      out.flush();
      return ExitCode.DONE;
    }
    WholeFile.writeText(output, target -> target.append(tidy.score()));
    out.println(output + ": a score. What was not certain, and how it was taken:");
    tidy.guesses().forEach(guess -> out.println(Paragraph.folded("- " + guess)));
    out.println("Next: matraloom check " + ShellWord.quoted(output.toString()));
    return ExitCode.DONE;
  }

  /** The text itself stays as it was pasted. */
  private void refuseToWriteOver() throws IOException {
    if (Files.exists(output) && Files.exists(text) && Files.isSameFile(output, text)) {
      throw new UserError(output + " is the text itself; give the score another name");
    }
    WholeFile.requirePlace(output);
  }

  private String pasted() throws IOException {
    boolean typed = text.toString().equals(STANDARD_INPUT);
    try (InputStream in = typed ? System.in : Files.newInputStream(text)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new UserError(text + ": a text has at most 1 MB (1,000,000 bytes)");
      }
      return new String(bytes, StandardCharsets.UTF_8).replace("\ufeff", "");
    } catch (NoSuchFileException e) {
      throw new UserError("there is no file " + text + "; - reads what is typed or pasted");
    }
  }
}
