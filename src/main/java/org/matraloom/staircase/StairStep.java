package org.matraloom.staircase;

import java.util.Optional;

/**
 * What to play next, and why.
 *
 * @param tempo in beats a minute
 * @param help what is played with it
 * @param looped the place that is looped; empty for the whole
 * @param move where that is from the pass before
 * @param reason why, a sentence
 * @param isDone whether the goal was reached, so that nothing is left to play
 */
public record StairStep(
    int tempo, Help help, Optional<Spot> looped, Move move, String reason, boolean isDone) {

  /** Harder, easier, or the same again. */
  public enum Move {
    /** Faster, with less help, or from a loop back to the whole. */
    UP,
    /** The same again. */
    SAME,
    /** Slower, with more help, or one place only. */
    DOWN
  }
}
