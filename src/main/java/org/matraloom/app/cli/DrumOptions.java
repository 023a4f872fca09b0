package org.matraloom.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.matraloom.drum.StrokeTable;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Wording;
import picocli.CommandLine.Option;

/** Whether a drum plays what is said, and with which strokes. */
public final class DrumOptions {

  @Option(names = "--drum", description = "Strokes of a drum of two heads in place of the sollus.")
  private boolean drum;

  @Option(
      names = "--strokes",
      paramLabel = "FILE",
      description = "A list of your own for --drum: lines such as dhim = din + thom.")
  private Path list;

  /**
   * The strokes of the sollus.
   *
   * @param lexicon the sollus that are known
   * @param wording the strokes that the score names; a list that was given goes before them
   * @return the table; empty if no drum is asked for
   * @throws UserError if the list cannot be read or has faulty lines
   */
  public Optional<StrokeTable> table(Lexicon lexicon, Wording wording) {
    return drum || list != null ? Optional.of(tableOrUsual(lexicon, wording)) : Optional.empty();
  }

  /** Whether the drum was asked for by its own option. */
  boolean isInPlace() {
    return drum;
  }

  /** The strokes of the list that was given, those of the score, and the usual ones. */
  StrokeTable tableOrUsual(Lexicon lexicon, Wording wording) {
    StrokeTable scored = StrokeTable.usual(lexicon).plus(wording);
    if (list == null) {
      return scored;
    }
    try {
      String text = Files.readString(list);
      return scored.plus(text, list.toString(), lexicon);
    } catch (IllegalArgumentException faulty) {
      throw new UserError(faulty.getMessage());
    } catch (IOException unreadable) {
      throw new UserError("the list of strokes " + list + " cannot be read as UTF-8 text");
    }
  }
}
