package org.matraloom.app.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.matraloom.drum.StrokeTable;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Wording;
import picocli.CommandLine.Option;

/**
 * Whether a drum plays what is said, in place of the voice or beside it, and with which strokes.
 */
public final class DrumOptions {

  @Option(names = "--drum", description = "Strokes of a drum of two heads in place of the sollus.")
  private boolean drum;

  @Option(
      names = "--strokes",
      paramLabel = "FILE",
      description = "A list of your own for --drum: lines such as dhim = din + thom.")
  private Path list;

  @Option(
      names = "--with-drum",
      description = "The drum beside the voice: the part drum of a mix, a line of a sheet.")
  private boolean beside;

  /**
   * Whether a drum beside the voice is asked for.
   *
   * @return true if it is
   */
  public boolean isBeside() {
    return beside;
  }

  /**
   * The strokes of a drum in place of the voice.
   *
   * @param lexicon the sollus that are known
   * @param wording the strokes that the score names; a list that was given goes before them
   * @return the table; empty if the voice speaks
   * @throws UserError if the list cannot be read or has faulty lines
   */
  public Optional<StrokeTable> table(Lexicon lexicon, Wording wording) {
    return !beside && (drum || list != null)
        ? Optional.of(tableOrUsual(lexicon, wording))
        : Optional.empty();
  }

  /**
   * The strokes of a drum beside the voice.
   *
   * @param lexicon the sollus that are known
   * @param wording the strokes that the score names
   * @return the table; empty if no such drum is asked for
   * @throws UserError if the list cannot be read or has faulty lines, or a drum in place of the
   *     voice is asked for too
   */
  public Optional<StrokeTable> beside(Lexicon lexicon, Wording wording) {
    if (beside && drum) {
      throw new UserError(
          "--drum is a drum in place of the voice, --with-drum beside it; take one");
    }
    return beside ? Optional.of(tableOrUsual(lexicon, wording)) : Optional.empty();
  }

  /** The strokes of the list that was given, those of the score, and the usual ones. */
  private StrokeTable tableOrUsual(Lexicon lexicon, Wording wording) {
    StrokeTable scored = StrokeTable.usual(lexicon).plus(wording);
    if (list == null) {
      return scored;
    }
    try {
      return scored.plus(GivenText.read("the list of strokes", list), list.toString(), lexicon);
    } catch (IllegalArgumentException faulty) {
      throw new UserError(faulty.getMessage());
    }
  }
}
