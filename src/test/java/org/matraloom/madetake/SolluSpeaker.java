package org.matraloom.madetake;

import java.util.Optional;
import org.matraloom.voice.SolluCue;

/** Somebody who says the sollus of a made take. */
public interface SolluSpeaker {

  int RATE = 44_100;

  /**
   * One sollu as a sound.
   *
   * @param samples one channel, peaking at 1 or below
   * @param feltFrame where in them its vowel begins
   * @param onsetFrame where in them it is first heard
   */
  record Spoken(float[] samples, int feltFrame, int onsetFrame) {}

  /** Says a sollu between its neighbours, of which the later gives no more room than its start. */
  Spoken say(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after);
}
