package org.matraloom.sheet;

import java.util.Optional;
import org.matraloom.breath.Breath;
import org.matraloom.score.Sollu;
import org.matraloom.time.Ratio;

/** One sign of the written page: what takes the time from one place to the next. */
public sealed interface Mark {

  /**
   * Where it begins, in beats of the performance.
   *
   * @return beats of the performance
   */
  Ratio beat();

  /**
   * How long it is, in beats.
   *
   * @return beats, more than 0
   */
  Ratio beats();

  /**
   * How many matras a beat holds here, kalam included.
   *
   * @return matras
   */
  int matrasPerBeat();

  /**
   * How many such marks go into a matra: 1, or 2, 4 and more where it is said faster.
   *
   * @return 1, 2, 4 or more
   */
  int speed();

  /**
   * The breath that begins in it.
   *
   * @return empty if none does
   */
  Optional<Breath> breath();

  /**
   * How it is written in plain text.
   *
   * @return a sollu, or a sign of a score
   */
  String sign();

  /**
   * Where it ends, in beats of the performance.
   *
   * @return beats of the performance
   */
  default Ratio endBeat() {
    return beat().plus(beats());
  }

  /**
   * A sollu on its own matra.
   *
   * @param beat where it begins, in beats of the performance
   * @param beats how long it is
   * @param matrasPerBeat how many matras the beat holds, kalam included
   * @param speed how many such marks go into a matra
   * @param sollu the sollu
   * @param text the sollu in the script of the page
   * @param opens whether a named phrase or a group begins with it
   * @param breath the breath that begins in it; empty if none does
   */
  record Said(
      Ratio beat,
      Ratio beats,
      int matrasPerBeat,
      int speed,
      Sollu sollu,
      String text,
      boolean opens,
      Optional<Breath> breath)
      implements Mark {

    @Override
    public String sign() {
      return text;
    }

    Said written(String text) {
      return new Said(beat, beats, matrasPerBeat, speed, sollu, text, opens, breath);
    }
  }

  /**
   * One matra, or a faster part of it, in which the sound before rings on.
   *
   * @param beat where it begins, in beats of the performance
   * @param beats how long it is
   * @param matrasPerBeat how many matras the beat holds, kalam included
   * @param speed how many such marks go into a matra
   * @param breath the breath that begins in it; empty if none does
   */
  record Karvai(Ratio beat, Ratio beats, int matrasPerBeat, int speed, Optional<Breath> breath)
      implements Mark {
    @Override
    public String sign() {
      return ",";
    }
  }

  /**
   * One matra, or a part of it, of silence.
   *
   * @param beat where it begins, in beats of the performance
   * @param beats how long it is
   * @param matrasPerBeat how many matras the beat holds, kalam included
   * @param speed how many such marks go into a matra
   * @param breath the breath that begins in it; empty if none does
   */
  record Silent(Ratio beat, Ratio beats, int matrasPerBeat, int speed, Optional<Breath> breath)
      implements Mark {
    @Override
    public String sign() {
      return ".";
    }
  }
}
