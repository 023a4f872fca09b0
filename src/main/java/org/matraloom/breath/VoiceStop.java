package org.matraloom.breath;

import org.matraloom.time.Ratio;

/**
 * A sollu after which the voice may stop before the next one begins: it rings, silence follows, or
 * its round ends. Positions are beats of the performance.
 *
 * @param last the sollu that sounds last
 * @param attackBeat where it begins
 * @param ownMatra the length of its own matra, in beats
 * @param endBeat where it has rung out
 * @param next where and in what the voice goes on
 * @param solluCount sollus said from the beginning, this one included
 * @param round the round it belongs to, from 1
 * @param endsRound whether its round says nothing after it
 * @param endsPhrase whether a phrase or a group ends with it
 */
record VoiceStop(
    String last,
    Ratio attackBeat,
    Ratio ownMatra,
    Ratio endBeat,
    Resumption next,
    long solluCount,
    int round,
    boolean endsRound,
    boolean endsPhrase) {

  /**
   * Where the voice begins or goes on.
   *
   * @param beat where the next sollu begins
   * @param round its round
   * @param phrase the phrase it stands in
   */
  record Resumption(Ratio beat, int round, String phrase) {}

  boolean rings() {
    return endBeat.minus(attackBeat).compareTo(ownMatra) > 0;
  }

  boolean leavesTime() {
    return rings() || endsRound || silence().signum() > 0;
  }

  Ratio silence() {
    return next.beat().minus(endBeat);
  }
}
