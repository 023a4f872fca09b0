package org.matraloom.score;

import org.matraloom.time.Ratio;

/** What happens next when a phrase is said, at an exact place and for an exact length. */
sealed interface Utterance {

  /**
   * Where it begins.
   *
   * @return beats after the beginning of the round
   */
  Ratio atBeat();

  /**
   * A sollu begins.
   *
   * @param atBeat beats after the beginning of the round
   * @param beats the length of its own matra
   * @param sollu what is said
   */
  record Sound(Ratio atBeat, Ratio beats, Sollu sollu) implements Utterance {}

  /**
   * The sound before it rings on.
   *
   * @param atBeat beats after the beginning of the round
   * @param beats how much longer it rings
   */
  record Ring(Ratio atBeat, Ratio beats) implements Utterance {}

  /**
   * Silence.
   *
   * @param atBeat beats after the beginning of the round
   * @param beats how long
   */
  record Quiet(Ratio atBeat, Ratio beats) implements Utterance {}

  /**
   * A named phrase begins.
   *
   * @param atBeat beats after the beginning of the round
   * @param name the phrase's name
   * @param depth 1 for a phrase named in the round's own phrase, 2 for one inside that, and so on
   */
  record Entry(Ratio atBeat, String name, int depth) implements Utterance {}

  /**
   * A named phrase has been said.
   *
   * @param atBeat beats after the beginning of the round
   * @param name the phrase's name
   * @param depth the depth of its {@link Entry}
   */
  record Leave(Ratio atBeat, String name, int depth) implements Utterance {}

  /**
   * A bar claim is passed.
   *
   * @param atBeat beats after the beginning of the round
   * @param bar the claim
   */
  record Claim(Ratio atBeat, Element.Bar bar) implements Utterance {}

  /**
   * A wish about breath is passed.
   *
   * @param atBeat beats after the beginning of the round
   * @param wish the wish
   */
  record Wish(Ratio atBeat, Element.BreathWish wish) implements Utterance {}

  /**
   * A kanakku group begins.
   *
   * @param atBeat beats after the beginning of the round
   * @param size its number
   * @param hold how many matras each of its sollus is held
   * @param beats how long it is without its karvai
   */
  record GroupHead(Ratio atBeat, int size, int hold, Ratio beats) implements Utterance {}

  /**
   * From here on a beat holds another number of matras, because a passage with a nadai of its own
   * begins or ends.
   *
   * @param atBeat beats after the beginning of the round
   * @param matrasPerBeat matras a beat, kalam included
   */
  record Density(Ratio atBeat, int matrasPerBeat) implements Utterance {}
}
