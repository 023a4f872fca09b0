package org.matraloom.app.handon;

import java.util.List;
import java.util.Optional;
import org.matraloom.app.cli.BreathOptions;
import org.matraloom.app.cli.LeadInOptions;
import org.matraloom.app.cli.ScriptOption;
import org.matraloom.app.cli.UserError;
import org.matraloom.breath.Breath;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetOptions;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What goes on a page, whatever its form. */
final class PageContentOptions {

  @Option(names = "--large", description = "Large print: 18 point, no underlines.")
  private boolean large;

  @Mixin private ScriptOption script;

  @Mixin private LeadInOptions leadIn;

  @Option(names = "--no-breaths", description = "Leave the breath marks out.")
  private boolean withoutBreaths;

  @Mixin private BreathOptions breathOptions;

  /** One row an avartana, without cues. */
  SheetOptions options(Performance performance, Lexicon lexicon) {
    return options(performance, lexicon, SheetOptions.Lines.AVARTANA, false);
  }

  SheetOptions options(
      Performance performance, Lexicon lexicon, SheetOptions.Lines lines, boolean cues) {
    if (!Sheet.canHold(performance)) {
      throw new UserError(
          "a sheet holds at most "
              + Sheet.MOST_MATRAS
              + " matras and this piece has more; take some of it with --rounds");
    }
    return new SheetOptions(lines, large, cues, leadIn.avartanas(), script.writing(lexicon));
  }

  /** Whole avartanas of words before those that lead in from samam; empty for no words. */
  Optional<Integer> leadIn() {
    return leadIn.avartanas();
  }

  BreathOptions breathOptions() {
    return breathOptions;
  }

  /** The breaths to mark. */
  List<Breath> breaths(Performance performance) {
    return withoutBreaths ? List.of() : breathOptions.plan(performance).breaths();
  }
}
