package org.matraloom.score;

import java.util.List;
import org.matraloom.time.Ratio;

/**
 * A sollu as it is spoken: its own part, and the karvai in which it rings on.
 *
 * <p>The own part is a matra as it is written there, in square brackets half of one. So a sollu
 * held for three matras, as in {@code 5*3}, is the same as one with two karvais after it, in
 * brackets too.
 *
 * @param beat where its felt beat falls, in beats of the performance
 * @param ownBeats how long its own part is, positive
 * @param rings the karvai after it, in parts of equal steps; none if it does not ring
 * @param sollu what is said
 * @param matrasPerBeat how many matras a beat holds where it begins, kalam included
 * @param opens what begins with it
 * @param phrase the innermost phrase it stands in; empty for words outside the score
 * @param round the round it belongs to, from 1; 0 for words before the first
 */
public record Spoken(
    Ratio beat,
    Ratio ownBeats,
    List<Matras> rings,
    Sollu sollu,
    int matrasPerBeat,
    Opens opens,
    String phrase,
    int round)
    implements Moment {

  /** What begins with a sollu. */
  public enum Opens {
    /** A round: no sollu of it came before. */
    ROUND,
    /** A named phrase or a kanakku group. */
    PHRASE,
    /** What is left of a phrase, after a phrase named in it has been said. */
    REST_OF_PHRASE,
    /** Nothing. */
    NOTHING
  }

  /** Copies the list. */
  public Spoken {
    rings = List.copyOf(rings);
  }

  /**
   * A word of one matra that is no part of the score.
   *
   * @param beat where it falls, in beats of the performance
   * @param sollu what is said
   * @param matrasPerBeat matras a beat, kalam included
   * @param round the round that is going on; 0 before the first
   * @return the word
   */
  public static Spoken aside(Ratio beat, Sollu sollu, int matrasPerBeat, int round) {
    Ratio matra = Ratio.of(1, matrasPerBeat);
    return new Spoken(beat, matra, List.of(), sollu, matrasPerBeat, Opens.NOTHING, "", round);
  }

  /**
   * How long it lasts, karvai included.
   *
   * @return beats
   */
  public Ratio beats() {
    return endBeat().minus(beat);
  }

  /**
   * Where it has rung out.
   *
   * @return beats of the performance
   */
  public Ratio endBeat() {
    return rings.isEmpty() ? beat.plus(ownBeats) : rings.get(rings.size() - 1).endBeat();
  }

  /**
   * Whether it rings on after its own part.
   *
   * @return true if a karvai follows
   */
  public boolean isRinging() {
    return !rings.isEmpty();
  }

  /**
   * The same sollu stopped before it has rung out.
   *
   * @param end where it stops, in beats of the performance, after its beginning
   * @return the shorter sollu; this one if it has ended by then
   */
  public Spoken stoppedAt(Ratio end) {
    if (endBeat().compareTo(end) <= 0) {
      return this;
    }
    List<Matras> left =
        rings.stream()
            .filter(ring -> ring.beat().compareTo(end) < 0)
            .map(ring -> ring.endBeat().compareTo(end) > 0 ? ring.before(end) : ring)
            .toList();
    return new Spoken(
        beat, ownBeats.min(end.minus(beat)), left, sollu, matrasPerBeat, opens, phrase, round);
  }

  /** The same sollu with its karvai. */
  Spoken ringing(List<Matras> karvai) {
    return new Spoken(beat, ownBeats, karvai, sollu, matrasPerBeat, opens, phrase, round);
  }

  @Override
  public void tell(MomentListener listener) {
    listener.spoken(this);
  }
}
