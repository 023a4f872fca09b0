package org.matraloom.score;

import java.util.ArrayList;
import java.util.List;
import org.matraloom.time.Ratio;

/**
 * Matras one after another, or equal parts of matras, in which a sound rings on or nothing sounds.
 *
 * @param beat where the first begins, in beats of the performance
 * @param beats how long they are together, positive
 * @param stepBeats how long one is; the last may be shorter
 * @param matrasPerBeat how many matras a beat holds here, kalam included
 */
public record Matras(Ratio beat, Ratio beats, Ratio stepBeats, int matrasPerBeat) {

  /** A karvai: counted in the longest of a matra, half of it and so on that fills it. */
  static Matras ringing(Ratio beat, Ratio beats, int matrasPerBeat) {
    return new Matras(beat, beats, step(beats, matrasPerBeat), matrasPerBeat);
  }

  /** A silence: counted in matras as far as they go. */
  static Matras silent(Ratio beat, Ratio beats, int matrasPerBeat) {
    return new Matras(beat, beats, Ratio.of(1, matrasPerBeat).min(beats), matrasPerBeat);
  }

  /** The longest of a matra, half of it and so on of which a length is a whole number. */
  static Ratio step(Ratio beats, int matrasPerBeat) {
    Ratio step = Ratio.of(1, matrasPerBeat);
    Ratio matras = beats.times(matrasPerBeat);
    while (!matras.isWhole() && matras.den() % 2 == 0) {
      matras = matras.times(2);
      step = step.dividedBy(2);
    }
    return matras.isWhole() ? step : beats;
  }

  /**
   * Where the last one ends.
   *
   * @return beats of the performance
   */
  public Ratio endBeat() {
    return beat.plus(beats);
  }

  /**
   * Each of them alone.
   *
   * @return in order, without gaps
   */
  public List<Matras> each() {
    List<Matras> each = new ArrayList<>();
    for (Ratio at = beat; at.compareTo(endBeat()) < 0; at = at.plus(stepBeats)) {
      Ratio length = endBeat().minus(at).min(stepBeats);
      each.add(new Matras(at, length, length, matrasPerBeat));
    }
    return each;
  }

  /** Whether others go on where these end, counted in the same steps of the same matras. */
  boolean goOnWith(Matras next) {
    return endBeat().equals(next.beat)
        && stepBeats.equals(next.stepBeats)
        && matrasPerBeat == next.matrasPerBeat;
  }

  /** These and those that follow them, as one. */
  Matras with(Matras next) {
    return new Matras(beat, beats.plus(next.beats), stepBeats, matrasPerBeat);
  }

  /** The part before a place that lies inside. */
  Matras before(Ratio place) {
    Ratio left = place.minus(beat);
    return new Matras(beat, left, stepBeats.min(left), matrasPerBeat);
  }
}
