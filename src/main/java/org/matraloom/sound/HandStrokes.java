package org.matraloom.sound;

import java.util.Optional;
import org.matraloom.schedule.Event;
import org.matraloom.score.Kriya;

/** Which stroke a kriya makes, and how much louder or softer than its part it is. */
final class HandStrokes {

  /** How much softer a kriya is when it is given again, in two kalai. */
  private static final double AGAIN_DB = -6;

  /**
   * One stroke.
   *
   * @param part the part it belongs to
   * @param samples its sound, peaking at 1.0
   * @param extraDb gain on top of the part's, in dB
   */
  record Stroke(MixPart part, float[] samples, double extraDb) {}

  private final HandSounds sounds;
  private final Mix mix;

  HandStrokes(HandSounds sounds, Mix mix) {
    this.sounds = sounds;
    this.mix = mix;
  }

  float[] tick() {
    return sounds.tick();
  }

  /** The stroke of a kriya; nothing where the hand holds. */
  Optional<Stroke> of(Event.HandBeat hand) {
    double extraDb = hand.again() ? AGAIN_DB : 0;
    if (hand.kriya() instanceof Kriya.Clap) {
      return Optional.of(
          hand.samam()
              ? new Stroke(MixPart.CLAP, sounds.samamClap(), mix.samamDb())
              : new Stroke(MixPart.CLAP, sounds.clap(), extraDb));
    }
    if (hand.kriya() instanceof Kriya.Count count) {
      return Optional.of(new Stroke(MixPart.COUNT, sounds.tap(count.finger()), extraDb));
    }
    if (hand.kriya() instanceof Kriya.Wave) {
      return Optional.of(new Stroke(MixPart.WAVE, sounds.wave(), extraDb));
    }
    return Optional.empty();
  }
}
