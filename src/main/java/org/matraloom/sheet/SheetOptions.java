package org.matraloom.sheet;

import java.util.List;
import org.matraloom.breath.Breath;

/**
 * What goes on a written page.
 *
 * @param lines how the piece is cut into rows
 * @param large whether it is for readers who see little: 18 point, no underlines
 * @param cues whether it also shows which sollu falls on each kriya
 * @param writing how the sollus are written
 * @param breaths the breaths to mark, in order; none for an unmarked page
 */
public record SheetOptions(
    Lines lines, boolean large, boolean cues, SolluWriting writing, List<Breath> breaths) {

  /** How a piece is cut into rows. */
  public enum Lines {
    /** One row an avartana. */
    AVARTANA,
    /** One line a phrase. */
    PHRASE
  }

  /** Copies the list. */
  public SheetOptions {
    breaths = List.copyOf(breaths);
  }
}
