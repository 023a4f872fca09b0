package org.matraloom.breath;

import org.matraloom.time.Ratio;

/**
 * One inhalation.
 *
 * @param startBeat where it begins, in beats of the performance
 * @param beats how long it may take, up to the next sollu
 * @param seconds the same in seconds, exact
 * @param kind how deep it can be
 * @param source where its time comes from
 * @param cutBeats how much of the sound before it is cut, in beats; 0 where nothing is
 * @param after the sollu before it, as spelled
 * @param afterBeat where that sollu begins, in beats of the performance
 * @param round the round it belongs to, from 1
 * @param endsPhrase whether a phrase, a group or a round ends before it
 * @param beforeChange whether it falls into the beat before a nadai change
 */
public record Breath(
    Ratio startBeat,
    Ratio beats,
    Ratio seconds,
    Kind kind,
    Source source,
    Ratio cutBeats,
    String after,
    Ratio afterBeat,
    int round,
    boolean endsPhrase,
    boolean beforeChange) {

  /** How deep a breath can be. */
  public enum Kind {
    /** Quick, short, unobtrusive; planned ahead. */
    CATCH,
    /** There is time to fill up. */
    FULL
  }

  /** Where the time for a breath comes from. */
  public enum Source {
    /** Written silence. */
    SILENCE,
    /** A ringing sound, cut after its attack. */
    KARVAI,
    /** The last sollu of a round, cut short. */
    JOIN
  }

  /**
   * Where the next sollu begins.
   *
   * @return beats of the performance
   */
  public Ratio endBeat() {
    return startBeat.plus(beats);
  }
}
