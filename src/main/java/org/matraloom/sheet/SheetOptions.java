package org.matraloom.sheet;

import java.util.Optional;
import org.matraloom.script.SolluWriting;

/**
 * What goes on a written page.
 *
 * @param lines how the piece is cut into rows
 * @param large whether it is for readers who see little: 18 point, no underlines
 * @param cues whether it also shows which sollu falls on each kriya
 * @param leadIn the whole avartanas of words that are told before those which lead in from samam;
 *     empty if none are told
 * @param writing how the sollus are written
 */
public record SheetOptions(
    Lines lines, boolean large, boolean cues, Optional<Integer> leadIn, SolluWriting writing) {

  /**
   * A page without lead-in.
   *
   * @param lines how the piece is cut into rows
   * @param large whether it is for readers who see little
   * @param cues whether it also shows which sollu falls on each kriya
   * @param writing how the sollus are written
   */
  public SheetOptions(Lines lines, boolean large, boolean cues, SolluWriting writing) {
    this(lines, large, cues, Optional.empty(), writing);
  }

  /** How a piece is cut into rows. */
  public enum Lines {
    /** One row an avartana. */
    AVARTANA,
    /** One line a phrase. */
    PHRASE,
    /** The first round in three speeds under one another. */
    SPEEDS
  }
}
