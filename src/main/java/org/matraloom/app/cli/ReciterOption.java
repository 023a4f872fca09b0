package org.matraloom.app.cli;

import org.matraloom.score.Composition;
import org.matraloom.score.TwoReciters;
import picocli.CommandLine.Option;

/** Which of two reciters is meant. */
public final class ReciterOption {

  private static final int MOST = 2;

  @Option(
      names = "--reciter",
      paramLabel = "N",
      description = "Of a score for two reciters only this one: 1 or 2.")
  private Integer number;

  /**
   * What one reciter says.
   *
   * @param piece a piece for one or two
   * @return the piece itself if it is for one, else what the reciter that was named says
   * @throws UserError if there is no such reciter, or two and none was named
   */
  public Composition one(Composition piece) {
    Composition asked = asked(piece);
    if (TwoReciters.in(asked)) {
      throw new UserError(
          "this takes one reciter, and the score has two; say which with --reciter 1 or"
              + " --reciter 2");
    }
    return asked;
  }

  /**
   * What is asked for, where two may be heard or shown at once.
   *
   * @param piece a piece for one or two
   * @return the piece itself, or what the reciter that was named says
   * @throws UserError if there is no such reciter
   */
  public Composition asked(Composition piece) {
    if (number == null) {
      return piece;
    }
    if (number < 1 || number > MOST) {
      throw new UserError("--reciter takes 1 or 2, given " + number);
    }
    if (TwoReciters.in(piece)) {
      TwoReciters both = TwoReciters.of(piece);
      return number == 1 ? both.first() : both.second();
    }
    if (number > 1) {
      throw new UserError("this score has one reciter; with lines under perform make a second");
    }
    return piece;
  }

  /**
   * Refuses a piece for two.
   *
   * @param piece the piece
   * @param what what takes one reciter only, such as "fit"
   * @return the piece
   * @throws UserError if it is for two
   */
  public static Composition requireOne(Composition piece, String what) {
    if (TwoReciters.in(piece)) {
      throw new UserError(
          what + " takes scores with one reciter, and this one has a second one in its lines with");
    }
    return piece;
  }
}
