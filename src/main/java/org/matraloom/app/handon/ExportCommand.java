package org.matraloom.app.handon;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.matraloom.app.cli.ExitCode;
import org.matraloom.app.cli.ScoreOptions;
import org.matraloom.app.cli.ScriptOption;
import org.matraloom.app.cli.SheetOutput;
import org.matraloom.app.cli.TimelineOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.app.cli.WholeFile;
import org.matraloom.exchange.Captions;
import org.matraloom.exchange.MidiFile;
import org.matraloom.exchange.MusicXml;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.TwoReciters;
import org.matraloom.script.SolluWriting;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetOptions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes files that other programs open. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Write a file that other programs open.",
      "The ending of its name says which:",
      "  .mid        Standard MIDI File: tempo, metre, lyrics, markers, the hand as percussion",
      "  .musicxml   MusicXML 4.0: sollus and hand on two staves, an avartana a measure",
      "  .vtt        WebVTT captions for a video that begins with the count-in",
      "  .csv .json  the timeline, as \"events\" prints it"
    },
    footer = {"", "Example: matraloom export samples-synth/gutter-song.loom -o gutter-song.mid"})
public final class ExportCommand implements Callable<Integer> {

  private static final int RATE = 48_000;

  /** What one caption holds. */
  enum CaptionUnit {
    PHRASE,
    SOLLU
  }

  @Spec private CommandSpec command;

  @Mixin private ScoreOptions score;

  @Option(
      names = {"-o", "--output"},
      required = true,
      paramLabel = "OUT",
      description = "The file to write; an older one is replaced.")
  private Path output;

  @Mixin private TimelineOptions options;

  @Mixin private ScriptOption script;

  @Option(
      names = "--captions",
      paramLabel = "BY",
      defaultValue = "phrase",
      description = "One caption a phrase, or one a sollu: phrase, sollu.")
  private CaptionUnit captions;

  @Override
  public Integer call() throws IOException {
    Composition piece = score.readAll();
    boolean two = TwoReciters.in(piece);
    if (two && List.of("musicxml", "xml", "vtt").contains(SheetOutput.endingOf(output))) {
      throw new UserError(
          output
              + ": this takes one reciter, and the score has two; say which with --reciter 1 or"
              + " --reciter 2");
    }
    TimelineOptions.Shown shown = options.shown(two ? TwoReciters.of(piece).first() : piece);
    Optional<Timeline> second =
        two ? Optional.of(options.beside(TwoReciters.of(piece).second())) : Optional.empty();
    Timeline timeline = shown.timeline();
    if (!Sheet.canHold(timeline.performance())) {
      throw new UserError(
          "a file holds at most "
              + Sheet.MOST_MATRAS
              + " matras and this piece has more; take some of it with --rounds");
    }
    SolluWriting writing = script.writing(score.lexicon());
    switch (SheetOutput.endingOf(output)) {
      case "mid", "midi" ->
          WholeFile.write(output, file -> MidiFile.write(timeline, second, writing, file));
      case "musicxml", "xml" ->
          WholeFile.write(output, file -> MusicXml.write(sheet(shown, writing), file));
      case "vtt" -> WholeFile.writeText(output, file -> captions(timeline, writing, file));
      case "csv", "json" -> WholeFile.write(output, file -> table(timeline, second, file));
      default ->
          throw new UserError(
              output + ": an export is written as .mid, .musicxml, .vtt, .csv or .json");
    }
    command.commandLine().getOut().println(output);
    return ExitCode.DONE;
  }

  private static Sheet sheet(TimelineOptions.Shown shown, SolluWriting writing) {
    return Sheet.of(
        shown.timeline().performance(),
        new SheetOptions(SheetOptions.Lines.AVARTANA, false, false, writing),
        shown.plan().get().breaths());
  }

  private void captions(Timeline timeline, SolluWriting writing, Appendable file)
      throws IOException {
    if (captions == CaptionUnit.SOLLU) {
      Captions.ofSollus(timeline, writing, file);
    } else {
      Captions.ofPhrases(timeline, writing, file);
    }
  }

  private void table(Timeline timeline, Optional<Timeline> second, OutputStream file)
      throws IOException {
    PrintWriter out = new PrintWriter(new OutputStreamWriter(file, StandardCharsets.UTF_8));
    boolean json = SheetOutput.endingOf(output).equals("json");
    if (second.isPresent() && json) {
      EventTable.printJson(timeline, second.get(), timeline.clock(RATE), out);
    } else if (second.isPresent()) {
      EventTable.printCsv(timeline, second.get(), timeline.clock(RATE), out);
    } else if (json) {
      EventTable.printJson(timeline, timeline.clock(RATE), out);
    } else {
      EventTable.printCsv(timeline, timeline.clock(RATE), out);
    }
    if (out.checkError()) {
      throw new IOException("the disk took no more");
    }
  }
}
