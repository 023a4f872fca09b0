package org.matraloom.score;

import org.matraloom.time.Ratio;

/**
 * The last stroke of a piece, which falls on the landing: common practice, as in a korvai whose
 * last tom is said on samam. It lands by its attack, so it is no part of the length.
 *
 * @param sollu what is said
 * @param karvai how many matras it rings on after its own, counted in the last round, at most
 *     {@value #LONGEST}; 0 leaves it open, and it fills a beat
 */
public record Stroke(Sollu sollu, int karvai) {

  /** The longest karvai, in matras. */
  public static final int LONGEST = 99;

  /**
   * How long it is.
   *
   * @param matrasPerBeat matras a beat in the last round, kalam included
   * @return beats
   */
  public Ratio beats(int matrasPerBeat) {
    return karvai > 0 ? Ratio.of(karvai + 1L, matrasPerBeat) : Ratio.ONE;
  }
}
