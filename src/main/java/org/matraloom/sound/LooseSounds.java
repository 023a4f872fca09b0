package org.matraloom.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.FrameClock;
import org.matraloom.voice.SolluCue;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.SolluWave;

/**
 * The sounds of a piece one by one, for a player that places and mixes them itself.
 *
 * <p>They are the very sounds of a rendering; only the adding up is left to the player.
 */
public final class LooseSounds {

  private final HandStrokes strokes;
  private final Mix mix;

  /**
   * One sound.
   *
   * @param samples one channel, peaking at 1.0 or below; never changed
   * @param leadFrames how many of them lie before the felt beat
   * @param gain how much the mix multiplies it by
   */
  public record Loose(float[] samples, int leadFrames, double gain) {}

  /**
   * Makes the strokes of the hand for a rate.
   *
   * @param ratePerSecond frames a second
   * @param mix how loud each part is; mutes and sides are not looked at
   */
  public LooseSounds(int ratePerSecond, Mix mix) {
    this.strokes = new HandStrokes(new HandSounds(ratePerSecond), mix);
    this.mix = mix;
  }

  /**
   * The stroke of a kriya.
   *
   * @param hand what the hand gives
   * @return its sound; nothing where the hand holds
   */
  public Optional<Loose> stroke(Event.HandBeat hand) {
    return strokes
        .of(hand)
        .map(stroke -> loose(stroke.samples(), 0, stroke.part(), stroke.extraDb()));
  }

  /**
   * The sound of a tick.
   *
   * @return its sound
   */
  public Loose tick() {
    return loose(strokes.tick(), 0, MixPart.TICK, 0);
  }

  /**
   * The sollus of a timeline.
   *
   * @param timeline what happens
   * @param clock where it happens, at the rate of the voice
   * @param voice says the sollus
   * @return one sound for every sollu, in order
   */
  public List<Loose> sollus(Timeline timeline, FrameClock clock, SolluVoice voice) {
    List<SolluCue> cues = new ArrayList<>();
    for (Event event : timeline) {
      if (event instanceof Event.SolluSaid said) {
        cues.add(SolluCue.of(said, clock));
      }
    }
    List<Loose> sounds = new ArrayList<>();
    for (int index = 0; index < cues.size(); index++) {
      SolluWave sound = voice.say(at(cues, index - 1), cues.get(index), at(cues, index + 1));
      sounds.add(loose(sound.samples(), sound.leadFrames(), MixPart.VOICE, 0));
    }
    return List.copyOf(sounds);
  }

  private static Optional<SolluCue> at(List<SolluCue> cues, int index) {
    return index < 0 || index >= cues.size() ? Optional.empty() : Optional.of(cues.get(index));
  }

  private Loose loose(float[] samples, int leadFrames, MixPart part, double extraDb) {
    return new Loose(samples, leadFrames, mix.centredGains(part, extraDb).left());
  }
}
