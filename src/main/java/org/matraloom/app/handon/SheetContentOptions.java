package org.matraloom.app.handon;

import java.util.List;
import java.util.Optional;
import org.matraloom.app.cli.DrumOptions;
import org.matraloom.app.cli.UserError;
import org.matraloom.breath.Breath;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.script.SolluWriting;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetOptions;
import org.matraloom.sheet.TwoReciterSheet;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What goes on a written sheet. */
final class SheetContentOptions {

  @Option(
      names = "--rows",
      paramLabel = "BY",
      defaultValue = "avartana",
      description = {
        "One row an avartana, one line a phrase, or the first round in three speeds",
        "under one another: avartana, phrase, speeds."
      })
  private SheetOptions.Lines lines;

  @Option(names = "--cues", description = "Show too which sollu falls on each kriya.")
  private boolean cues;

  @Mixin private PageContentOptions content;

  @Mixin private DrumOptions drum;

  List<Breath> breaths(Performance performance) {
    return content.breaths(performance);
  }

  SheetOptions options(Performance performance, Lexicon lexicon) {
    SheetOptions said = content.options(performance, lexicon, lines, cues);
    return drum.table(lexicon, performance.composition().wording())
        .map(strokes -> SolluWriting.named(lexicon, strokes::written))
        .map(
            writing ->
                new SheetOptions(said.lines(), said.large(), said.cues(), said.leadIn(), writing))
        .orElse(said);
  }

  /** Whether a line of strokes is asked for below the lines of the voice. */
  boolean hasDrumBeside() {
    return drum.isBeside();
  }

  /**
   * The sheet; with the strokes of a drum below each line of it, if they are asked for beside the
   * voice.
   */
  Sheet sheet(Performance performance, Lexicon lexicon) {
    Sheet said = Sheet.of(performance, options(performance, lexicon), breaths(performance));
    Optional<SolluWriting> strokes =
        drum.beside(lexicon, performance.composition().wording())
            .map(table -> SolluWriting.named(lexicon, table::written));
    if (strokes.isPresent() && (lines != SheetOptions.Lines.AVARTANA || cues)) {
      throw new UserError("--with-drum takes a row an avartana, without cues");
    }
    return strokes.map(writing -> TwoReciterSheet.withStrokes(said, writing)).orElse(said);
  }
}
