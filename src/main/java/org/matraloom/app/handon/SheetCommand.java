package org.matraloom.app.handon;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.OneTala;
import org.matraloom.app.cli.RoundsOption;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.SheetOutput;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.TwoReciters;
import org.matraloom.sheet.ReadAloud;
import org.matraloom.sheet.Rebar;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetOptions;
import org.matraloom.sheet.TextSheet;
import org.matraloom.sheet.Trikala;
import org.matraloom.sheet.TwoReciterSheet;
import org.matraloom.sheet.TwoReciterText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the page. */
@Command(
    name = "sheet",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Write the page: beats as cells under their kriyas, sums, breaths, the landing.",
      "As .pdf, .svg, .html or .txt; without -o as text, which reads back as a score."
    },
    footer = {
      "",
      "Breath marks are suggestions; stop on pain or dizziness.",
      "Example: matraloom sheet samples-synth/gutter-song.loom -o gutter-song.pdf --cues"
    })
public final class SheetCommand implements Callable<Integer> {

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "OUT",
      description = "The file to write; an older one is replaced.")
  private Path output;

  @Mixin private RoundsOption rounds;

  @Mixin private SheetContentOptions content;

  @Option(names = "--read-aloud", description = "Write sentences for a screen reader.")
  private boolean readAloud;

  @Option(
      names = "--rebar",
      paramLabel = "NADAI",
      description = "Lay the first round taken out in this nadai too, 1 to 9, and compare.")
  private Integer rebar;

  @Override
  public Integer call() throws IOException {
    Composition composition = score.readAll();
    if (TwoReciters.in(composition)) {
      both(TwoReciters.of(composition));
      return ExitCode.DONE;
    }
    Performance performance = rounds.of(Performance.of(composition));
    SheetOptions options = content.options(performance, score.lexicon());
    PrintWriter out = command.commandLine().getOut();
    if (rebar != null) {
      OneTala.of(composition, "--rebar");
      rebar(composition, performance, options, out);
      return ExitCode.DONE;
    }
    if (options.lines() == SheetOptions.Lines.SPEEDS) {
      requireDrawing();
      SheetOutput.write(Trikala.of(performance, options), score.lexicon(), output, out);
      return ExitCode.DONE;
    }
    Sheet sheet = content.sheet(performance, score.lexicon());
    if (content.hasDrumBeside() && (readAloud || output == null || SheetOutput.isText(output))) {
      throw new UserError(
          "--with-drum is drawn; give -o with .pdf, .svg or .html, or take --drum, which has both"
              + " in text");
    }
    if (readAloud && output != null) {
      requireText();
      WholeFile.writeText(output, file -> ReadAloud.write(sheet, file));
      out.println(output);
    } else if (readAloud) {
      ReadAloud.write(sheet, out);
    } else if (output != null) {
      SheetOutput.write(sheet, score.lexicon(), output, out);
    } else {
      TextSheet.write(sheet, score.lexicon(), out);
    }
    return ExitCode.DONE;
  }

  /** Two reciters on one sheet. */
  private void both(TwoReciters reciters) throws IOException {
    SheetOptions options = content.options(Performance.of(reciters.first()), score.lexicon());
    boolean whole = options.lines() == SheetOptions.Lines.AVARTANA && !options.cues();
    if (!whole || rounds.isGiven() || readAloud || rebar != null) {
      throw new UserError(
          "phrases, speeds, cues, rounds, rebar and read aloud take one reciter, and the score has"
              + " two; say which with --reciter 1 or --reciter 2");
    }
    TwoReciterSheet sheet = TwoReciterSheet.of(reciters, options, content::breaths);
    PrintWriter out = command.commandLine().getOut();
    if (output == null) {
      TwoReciterText.write(sheet, score.lexicon(), out);
    } else if (SheetOutput.isText(output)) {
      WholeFile.writeText(output, file -> TwoReciterText.write(sheet, score.lexicon(), file));
      out.println(output);
    } else {
      SheetOutput.write(sheet.together(), score.lexicon(), output, out);
    }
  }

  private void rebar(
      Composition composition, Performance performance, SheetOptions options, PrintWriter out)
      throws IOException {
    if (rebar < 1 || rebar > Composition.HIGHEST_NADAI) {
      throw new UserError(
          "--rebar takes a nadai of 1 to " + Composition.HIGHEST_NADAI + ", given " + rebar);
    }
    List<Span.Round> taken = performance.rounds();
    Rebar both = Rebar.of(taken.get(0), composition, rebar, options);
    if (output == null) {
      both.write(out);
    } else if (SheetOutput.endingOf(output).equals("txt")) {
      WholeFile.writeText(output, both::write);
      out.println(output);
    } else {
      SheetOutput.write(both.together(), score.lexicon(), output, out);
    }
  }

  private void requireDrawing() {
    boolean drawn = output != null && !readAloud && !SheetOutput.isText(output);
    if (!drawn) {
      throw new UserError(
          "three speeds are drawn under one another; give -o with .pdf, .svg or .html");
    }
  }

  private void requireText() {
    if (!SheetOutput.endingOf(output).equals("txt")) {
      throw new UserError(output + ": what is read aloud is written as .txt");
    }
  }
}
