package org.matraloom.sheet;

import org.matraloom.time.Ratio;

/**
 * What one round contributes to a row.
 *
 * @param round which round, from 1
 * @param phrase the round's phrase
 * @param nadai matras a beat in the first kalam
 * @param kalam 1, 2 or 3
 * @param opensHere whether the round begins in this row
 * @param from where its part of the row begins, in beats
 * @param beats how long its part of the row is
 * @param matras how many of its matras fall into the row
 * @param soFar how many have been said when the row ends
 * @param total how many it has
 */
public record RoundPart(
    int round,
    String phrase,
    int nadai,
    int kalam,
    boolean opensHere,
    Ratio from,
    Ratio beats,
    Ratio matras,
    Ratio soFar,
    Ratio total) {

  /** The sum for the margin: the matras of this row, and how far the round has come. */
  String sum() {
    return matras.equals(total)
        ? matras.toMixed()
        : matras.toMixed() + " (" + soFar.toMixed() + "/" + total.toMixed() + ")";
  }
}
