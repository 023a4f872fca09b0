package org.matraloom.score;

import java.util.Optional;
import org.matraloom.time.Ratio;

/**
 * How a piece closes after its last matra.
 *
 * @param stroke the sollu said on the landing itself; none if that belongs to what follows
 * @param avartanas how many avartanas the tala goes on after the landing, from 0 to {@value #MOST}
 */
public record Closing(Optional<Stroke> stroke, int avartanas) {

  /** The most avartanas that the tala goes on. */
  public static final int MOST = 16;

  /** Nothing follows the last matra. */
  public static final Closing NONE = new Closing(Optional.empty(), 0);

  /**
   * Checks the number.
   *
   * @throws IllegalArgumentException if the avartanas are outside their range
   */
  public Closing {
    if (avartanas < 0 || avartanas > MOST) {
      throw new IllegalArgumentException(
          "the tala goes on for 0 to " + MOST + " avartanas, given " + avartanas);
    }
  }

  /**
   * How many avartanas the tala goes on where nothing is said of it: one after a last stroke, so
   * that it is heard to stand on the beat; else none.
   *
   * @param stroke the last stroke, if there is one
   * @return 1 or 0
   */
  public static int usualAvartanas(Optional<Stroke> stroke) {
    return stroke.isPresent() ? 1 : 0;
  }

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
}
