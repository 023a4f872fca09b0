package org.matraloom.score;

import org.matraloom.time.Ratio;

/** A stretch of a performance with one nadai. */
public sealed interface Span {

  /**
   * Where it begins.
   *
   * @return beats; 0 is the samam of the avartana in which the performance starts
   */
  Ratio startBeat();

  /**
   * How long it is.
   *
   * @return beats, not negative
   */
  Ratio beats();

  /**
   * The matras of one beat, kalam included.
   *
   * @return matras a beat
   */
  int matrasPerBeat();

  /**
   * Where it ends.
   *
   * @return beats
   */
  default Ratio endBeat() {
    return startBeat().plus(beats());
  }

  /**
   * The length counted in its own matras.
   *
   * @return matras, exact
   */
  default Ratio matras() {
    return beats().times(matrasPerBeat());
  }

  /**
   * One saying of a phrase.
   *
   * @param number which round of the performance, from 1
   * @param phrase the phrase's name
   * @param nadai matras a beat in the first kalam
   * @param kalam 1, 2 or 3
   * @param startBeat where it begins
   * @param beats how long it is
   * @param sollus how many sollus are said
   */
  record Round(
      int number, String phrase, int nadai, int kalam, Ratio startBeat, Ratio beats, long sollus)
      implements Span {
    @Override
    public int matrasPerBeat() {
      return nadai * Composition.density(kalam);
    }
  }

  /**
   * A planned silence.
   *
   * @param nadai matras a beat while it lasts
   * @param startBeat where it begins
   * @param beats how long it is
   */
  record Pause(int nadai, Ratio startBeat, Ratio beats) implements Span {
    @Override
    public int matrasPerBeat() {
      return nadai;
    }
  }
}
