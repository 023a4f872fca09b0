package org.matraloom.sound;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.FrameClock;

/** Has the sollus of a timeline said, each just before it is needed. */
final class VoicePart {

  private final Iterator<Event> events;
  private final FrameClock clock;
  private final SolluVoice voice;
  private final Mix mix;
  private Optional<SolluCue> before = Optional.empty();
  private Optional<SolluCue> next;

  VoicePart(Timeline timeline, FrameClock clock, Mix mix, SolluVoice voice) {
    this.events = timeline.iterator();
    this.clock = clock;
    this.voice = voice;
    this.mix = mix;
    this.next = mix.sounds(Part.VOICE) ? pull() : Optional.empty();
  }

  /** Adds every sollu whose sound may begin before a frame. */
  void collect(long endFrame, List<Sounding> sounding) {
    while (next.isPresent()) {
      SolluCue cue = next.get();
      if (cue.startFrame() - voice.longestLeadFrames() >= endFrame) {
        return;
      }
      Optional<SolluCue> after = pull();
      SolluSound sound = voice.say(before, cue, after);
      Mix.Gains gains = mix.voiceGains(cue.said().round());
      sounding.add(new Sounding(sound.samples(), cue.startFrame() - sound.leadFrames(), gains));
      before = next;
      next = after;
    }
  }

  private Optional<SolluCue> pull() {
    while (events.hasNext()) {
      if (events.next() instanceof Event.SolluSaid said) {
        return Optional.of(SolluCue.of(said, clock));
      }
    }
    return Optional.empty();
  }
}
