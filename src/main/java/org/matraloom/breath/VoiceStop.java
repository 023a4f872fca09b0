package org.matraloom.breath;

import org.matraloom.form.Joint;
import org.matraloom.time.Ratio;

/**
 * A sollu after which the voice may stop before the next one begins: it rings, silence follows, its
 * round ends, or the score asks for a breath. Positions are beats of the performance.
 *
 * @param last the sollu that sounds last
 * @param endBeat where it has rung out
 * @param next where and in what the voice goes on
 * @param solluCount sollus said from the beginning, this one included
 * @param standing where it stands in the piece
 */
record VoiceStop(Last last, Ratio endBeat, Resumption next, long solluCount, Standing standing) {

  /**
   * The sollu that sounds last.
   *
   * @param spelling as spelled
   * @param beat where it begins
   * @param ownBeats the length of its own part
   * @param round its round, from 1
   */
  record Last(String spelling, Ratio beat, Ratio ownBeats, int round) {
    Ratio ownEnd() {
      return beat.plus(ownBeats);
    }
  }

  /**
   * Where the voice begins or goes on.
   *
   * @param beat where the next sollu begins
   * @param round its round
   * @param phrase the phrase it stands in
   */
  record Resumption(Ratio beat, int round, String phrase) {}

  /** What the score wishes. */
  enum Wish {
    /** Nothing. */
    NONE,
    /** A breath. */
    ASKED,
    /** No breath. */
    FORBIDDEN
  }

  /**
   * Where a stop stands in the piece.
   *
   * @param joint what ends with its sollu
   * @param place equal for stops at equal places; see {@link VoiceReader}
   * @param beforeLastMora whether the last mora of its round begins after it
   * @param wish what the score wishes here
   */
  record Standing(Joint joint, Object place, boolean beforeLastMora, Wish wish) {}

  /** Written out, for the sake of the start: see {@link Ratio}. */
  @Override
  public boolean equals(Object other) {
    return other instanceof VoiceStop stop
        && solluCount == stop.solluCount
        && endBeat.equals(stop.endBeat)
        && last.equals(stop.last)
        && next.equals(stop.next)
        && standing.equals(stop.standing);
  }

  @Override
  public int hashCode() {
    return 31 * Long.hashCode(solluCount) + endBeat.hashCode();
  }

  Joint joint() {
    return standing.joint();
  }

  boolean rings() {
    return endBeat.compareTo(last.ownEnd()) > 0;
  }

  boolean endsRound() {
    return standing.joint() == Joint.ROUND;
  }

  boolean isAsked() {
    return standing.wish() == Wish.ASKED;
  }

  boolean isForbidden() {
    return standing.wish() == Wish.FORBIDDEN;
  }

  boolean leavesTime() {
    return rings() || endsRound() || isAsked() || silence().signum() > 0;
  }

  Ratio silence() {
    return next.beat().minus(endBeat);
  }
}
