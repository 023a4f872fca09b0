package org.matraloom.app.cli;

import java.util.Optional;
import org.matraloom.drum.StrokeTable;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Wording;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Whether a drum plays what is said, in place of the voice or beside it. */
public final class DrumBesideOptions {

  @Mixin private DrumOptions drum;

  @Option(
      names = "--with-drum",
      description = "The drum beside the voice, as the part drum of the mix.")
  private boolean beside;

  /**
   * The strokes of a drum in place of the voice.
   *
   * @param lexicon the sollus that are known
   * @param wording the strokes that the score names
   * @return the table; empty if the voice speaks
   * @throws UserError if the list cannot be read or has faulty lines
   */
  public Optional<StrokeTable> table(Lexicon lexicon, Wording wording) {
    return beside ? Optional.empty() : drum.table(lexicon, wording);
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
    if (beside && drum.isInPlace()) {
      throw new UserError(
          "--drum is a drum in place of the voice, --with-drum beside it; take one");
    }
    return beside ? Optional.of(drum.tableOrUsual(lexicon, wording)) : Optional.empty();
  }
}
