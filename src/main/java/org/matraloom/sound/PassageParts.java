package org.matraloom.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.matraloom.time.FrameClock;
import org.matraloom.voice.SolluVoice;

/** All parts of a passage but the drone, until another passage takes over. */
final class PassageParts {

  private final HandPart hand;
  private final VoicePart voice;
  private final Optional<VoicePart> ticks;
  private final BreathPart breath;
  private final List<CompanionPart> companions;
  private final int leadFrames;
  private final long clockFrame;
  private final long fromFrame;
  private final List<ActiveSound> sounding = new ArrayList<>();
  private long handEndFrame = Long.MAX_VALUE;
  private long voiceEndFrame = Long.MAX_VALUE;

  PassageParts(
      Passage passage, FrameClock clock, long clockFrame, long fromFrame, SolluVoice voice) {
    Mix mix = passage.mix();
    this.ticks =
        voice.ticks().map(words -> VoicePart.onTicks(passage.timeline(), clock, mix, words));
    Mix hands = ticks.isPresent() ? mix.without(Set.of(MixPart.TICK)) : mix;
    this.hand = new HandPart(passage.timeline(), clock, hands);
    this.voice = new VoicePart(passage.timeline(), clock, mix, voice);
    this.breath = new BreathPart(passage.timeline(), clock, mix);
    this.companions =
        passage.companions().stream().map(each -> new CompanionPart(each, clock, mix)).toList();
    this.leadFrames = voice.longestLeadFrames();
    this.clockFrame = clockFrame;
    this.fromFrame = fromFrame;
  }

  long fromFrame() {
    return fromFrame;
  }

  /** Lets no stroke begin at the one frame or later, and no sollu at the other or later. */
  void end(long handFrame, long voiceFrame) {
    handEndFrame = Math.min(handEndFrame, handFrame - clockFrame);
    voiceEndFrame = Math.min(voiceEndFrame, voiceFrame - clockFrame);
  }

  /** Whether nothing sounds any more and nothing will, given that all before a frame has begun. */
  boolean isOver(long openFrame) {
    long open = openFrame - clockFrame;
    return handEndFrame <= open && voiceEndFrame <= open && sounding.isEmpty();
  }

  /** Adds what falls into a block of the rendering. */
  void addTo(float[] left, float[] right, long blockFrame, int frames) {
    long block = blockFrame - clockFrame;
    long end = block + frames;
    hand.collect(Math.min(end, handEndFrame), sounding);
    voice.collect(Math.min(end, voiceEndFrame - leadFrames), sounding);
    ticks.ifPresent(words -> words.collect(Math.min(end, voiceEndFrame - leadFrames), sounding));
    companions.forEach(each -> each.collect(end, voiceEndFrame, sounding));
    breath.collect(Math.min(end, voiceEndFrame), sounding);
    for (ActiveSound sound : sounding) {
      sound.addTo(left, right, block, frames);
    }
    sounding.removeIf(sound -> sound.endsBy(end));
  }
}
