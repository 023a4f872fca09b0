package org.matraloom.voice;

import java.util.Optional;

/**
 * Says sollus, one at a time.
 *
 * <p>The renderer asks for each sollu once, in order, early enough for its lead, and adds the
 * sounds together where they overlap. The answer may depend on nothing but the cues, so that the
 * same piece gives the same samples. A lead that would reach before frame 0 is cut off.
 */
public interface SolluVoice {

  /**
   * The rate the voice is made for.
   *
   * @return frames a second
   */
  int ratePerSecond();

  /**
   * The most a sound may begin before its felt beat, as a consonant does.
   *
   * @return frames, not negative
   */
  int longestLeadFrames();

  /**
   * Who says the subdivision words in place of the ticks.
   *
   * @return the voice and its words; nothing where ticks are ticks
   */
  default Optional<SpokenTicks> ticks() {
    return Optional.empty();
  }

  /**
   * Shapes one sollu.
   *
   * @param before the sollu said before it, if there is one
   * @param cue what to say
   * @param after the sollu said next, if there is one, however far off
   * @return its sound
   */
  SolluWave say(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after);
}
