package org.matraloom.app.cli;

import org.matraloom.score.Composition;

/** What cannot be done with a piece that changes its tala on the way. */
public final class OneTala {

  private OneTala() {}

  /**
   * Refuses a piece that changes its tala.
   *
   * @param piece the piece
   * @param what what keeps to one tala, such as "fit"
   * @return the piece
   * @throws UserError if it changes its tala
   */
  public static Composition of(Composition piece, String what) {
    if (piece.changesTala()) {
      throw new UserError(
          what
              + " keeps to one tala, and this score changes it; take the part in each tala as a"
              + " score of its own");
    }
    return piece;
  }
}
