package org.matraloom.breath;

import org.matraloom.score.Composition;

/**
 * A change that makes an impossible piece possible; it has been tried out.
 *
 * @param kind what is changed
 * @param words what to do, and what it does to the landing
 * @param composition the composition with the change made
 * @param settings the settings with the change made
 */
public record Cure(Kind kind, String words, Composition composition, BreathSettings settings) {

  /** What is changed. */
  public enum Kind {
    /** The tempo of the beat. */
    TEMPO,
    /** A ringing sound may be cut, which the settings forbid so far. */
    KARVAI,
    /** Silent matras are added, and the start is moved so that a piece that landed still lands. */
    ADDED_SILENCE,
    /** Sollus are left out and their matras used for air; nothing else moves. */
    LEFT_OUT
  }
}
