package org.matraloom.sound;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.FrameClock;
import org.matraloom.voice.SolluCue;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.SolluWave;
import org.matraloom.voice.SpokenTicks;

/** Has the sollus of a timeline, or the words on its ticks, said, each just before it is needed. */
final class VoicePart {

  /** How loud something said is. */
  @FunctionalInterface
  private interface Level {
    Mix.Gains of(Event.SolluSaid said);
  }

  private final Iterator<Event.SolluSaid> sollus;
  private final FrameClock clock;
  private final SolluVoice voice;
  private final Level level;
  private Optional<SolluCue> before = Optional.empty();
  private Optional<SolluCue> next;

  private VoicePart(
      Iterator<Event.SolluSaid> sollus,
      FrameClock clock,
      SolluVoice voice,
      boolean sounds,
      Level level) {
    this.sollus = sollus;
    this.clock = clock;
    this.voice = voice;
    this.level = level;
    this.next = sounds ? pull() : Optional.empty();
  }

  /** The sollus of a timeline. */
  VoicePart(Timeline timeline, FrameClock clock, Mix mix, SolluVoice voice) {
    this(timeline, clock, mix, voice, MixPart.VOICE);
  }

  /** The sollus of a timeline, as a part of the mix. */
  VoicePart(Timeline timeline, FrameClock clock, Mix mix, SolluVoice voice, MixPart part) {
    this(
        StreamSupport.stream(timeline.spliterator(), false)
            .filter(Event.SolluSaid.class::isInstance)
            .map(Event.SolluSaid.class::cast)
            .iterator(),
        clock,
        voice,
        mix.sounds(part),
        said -> mix.saidGains(part, said.round()));
  }

  /** The words on the ticks of a timeline. */
  static VoicePart onTicks(Timeline timeline, FrameClock clock, Mix mix, SpokenTicks ticks) {
    Mix.Gains gains = mix.gains(MixPart.TICK, SpokenTicks.LEVEL_DB);
    return new VoicePart(
        ticks.words(timeline), clock, ticks.voice(), mix.sounds(MixPart.TICK), said -> gains);
  }

  /** Adds every sollu whose sound may begin before a frame. */
  void collect(long endFrame, List<ActiveSound> sounding) {
    while (next.isPresent()) {
      SolluCue cue = next.get();
      if (cue.startFrame() - voice.longestLeadFrames() >= endFrame) {
        return;
      }
      Optional<SolluCue> after = pull();
      SolluWave sound = voice.say(before, cue, after);
      sounding.add(
          new ActiveSound(
              sound.samples(), cue.startFrame() - sound.leadFrames(), level.of(cue.said())));
      before = next;
      next = after;
    }
  }

  private Optional<SolluCue> pull() {
    return sollus.hasNext() ? Optional.of(SolluCue.of(sollus.next(), clock)) : Optional.empty();
  }
}
