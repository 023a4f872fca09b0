package org.matraloom.app.open;

import java.util.List;
import org.matraloom.app.cli.UserError;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;
import org.matraloom.script.Script;
import org.matraloom.script.SolluWriting;
import org.matraloom.sheet.Mark;
import org.matraloom.sheet.Sheet;
import org.matraloom.sheet.SheetOptions;
import org.matraloom.time.Ratio;

/**
 * Where the marks of a sheet lie, exactly; a page knows them by their numbers, from 0.
 *
 * @param marks the marks of all rows, in order
 */
record MarkBeats(List<Mark> marks) {

  static MarkBeats of(Performance performance) {
    SheetOptions options =
        new SheetOptions(
            SheetOptions.Lines.AVARTANA,
            false,
            false,
            new SolluWriting(Script.LATIN, Lexicon.standard()));
    return new MarkBeats(
        Sheet.of(performance, options, List.of()).rows().stream()
            .flatMap(row -> row.cells().stream())
            .flatMap(cell -> cell.marks().stream())
            .toList());
  }

  Ratio start(int number) {
    return mark(number).beat();
  }

  Ratio end(int number) {
    return mark(number).endBeat();
  }

  private Mark mark(int number) {
    if (number < 0 || number >= marks.size()) {
      throw new UserError("the sheet has " + marks.size() + " marks, asked for number " + number);
    }
    return marks.get(number);
  }
}
