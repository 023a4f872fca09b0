package org.matraloom.voice;

import org.matraloom.schedule.Event;
import org.matraloom.time.FrameClock;

/**
 * A sollu with its place in frames.
 *
 * @param said what is said, and where in beats
 * @param startFrame where its felt beat falls
 * @param lengthFrames how long it lasts, karvai included; the difference of two grid frames
 */
public record SolluCue(Event.SolluSaid said, long startFrame, long lengthFrames) {

  /**
   * The cue for a sollu of a timeline.
   *
   * @param said the sollu
   * @param clock turns its beats into frames
   * @return the cue
   */
  public static SolluCue of(Event.SolluSaid said, FrameClock clock) {
    long startFrame = clock.frameAt(said.beat());
    return new SolluCue(said, startFrame, clock.frameAt(said.spoken().endBeat()) - startFrame);
  }
}
