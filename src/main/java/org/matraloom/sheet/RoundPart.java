package org.matraloom.sheet;

import org.matraloom.score.Span;
import org.matraloom.time.Ratio;

/**
 * What one round contributes to a row.
 *
 * @param whole the round
 * @param opensHere whether the round begins in this row
 * @param from where its part of the row begins, in beats
 * @param beats how long its part of the row is
 * @param matras how many of its matras fall into the row
 * @param soFar how many have been said when the row ends
 */
public record RoundPart(
    Span.Round whole, boolean opensHere, Ratio from, Ratio beats, Ratio matras, Ratio soFar) {

  /**
   * Which round.
   *
   * @return from 1
   */
  public int round() {
    return whole.number();
  }

  /**
   * The round's phrase.
   *
   * @return its name
   */
  public String phrase() {
    return whole.phrase();
  }

  /**
   * The nadai.
   *
   * @return matras a beat in the first kalam
   */
  public int nadai() {
    return whole.nadai();
  }

  /**
   * The kalam.
   *
   * @return 1, 2 or 3
   */
  public int kalam() {
    return whole.kalam();
  }

  /**
   * The length of the round.
   *
   * @return in matras
   */
  public Ratio total() {
    return whole.matras();
  }

  /** The sum for the margin: the matras of this row, and how far the round has come. */
  String sum() {
    return matras.equals(total())
        ? matras.toMixed()
        : matras.toMixed() + " (" + soFar.toMixed() + "/" + total().toMixed() + ")";
  }
}
