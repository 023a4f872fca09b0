package org.matraloom.sound;

import java.util.List;
import org.matraloom.time.FrameClock;
import org.matraloom.voice.SolluVoice;

/** One companion of a passage, each sollu just before it is needed. */
final class CompanionPart {

  private final VoicePart part;
  private final int leadFrames;

  CompanionPart(Companion companion, FrameClock clock, Mix mix) {
    SolluVoice voice = companion.voice().apply(clock.ratePerSecond());
    this.part = new VoicePart(companion.timeline(), clock, mix, voice, companion.part());
    this.leadFrames = voice.longestLeadFrames();
  }

  /** Adds what may begin before a frame, and nothing whose beat is at or after another. */
  void collect(long endFrame, long silentFrame, List<ActiveSound> sounding) {
    part.collect(Math.min(endFrame, silentFrame - leadFrames), sounding);
  }
}
