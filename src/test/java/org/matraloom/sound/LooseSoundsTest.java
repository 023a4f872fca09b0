package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Kriya;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/** Sounds handed out one by one add up to the rendering. */
class LooseSoundsTest {

  private static final int RATE = 24_000;

  @Test
  void placedOneByOneTheyAreTheRendering() {
    Timeline timeline = Pieces.adi80(Tempo.of(60), 1);
    Mix mix = Mix.lesson().without(EnumSet.of(MixPart.TICK)).withOutput(-12);
    FrameClock clock = timeline.clock(RATE);
    float[] rendered = Rendered.mono(timeline, RATE, mix);
    double[] placed = new double[rendered.length];
    LooseSounds loose = new LooseSounds(RATE, mix);
    for (Event event : timeline) {
      if (event instanceof Event.HandBeat hand) {
        loose.stroke(hand).ifPresent(sound -> add(sound, clock.frameAt(hand.beat()), placed));
      }
    }
    List<LooseSounds.Loose> sollus = loose.sollus(timeline, clock, new GridVoice(RATE));
    int said = 0;
    for (Event event : timeline) {
      if (event instanceof Event.SolluSaid sollu) {
        add(sollus.get(said++), clock.frameAt(sollu.beat()), placed);
      }
    }
    assertEquals(said, sollus.size());
    double worst = 0;
    for (int frame = 2 * RATE; frame < rendered.length; frame++) {
      worst = Math.max(worst, Math.abs(rendered[frame] - placed[frame]));
    }
    assertTrue(worst < 1e-5, "farthest from the rendering: " + worst);
  }

  private static void add(LooseSounds.Loose sound, long felt, double[] placed) {
    for (int i = 0; i < sound.samples().length; i++) {
      int at = (int) (felt - sound.leadFrames() + i);
      if (at >= 0 && at < placed.length) {
        placed[at] += sound.gain() * sound.samples()[i];
      }
    }
  }

  @Test
  void aHeldHandMakesNoSound() {
    LooseSounds loose = new LooseSounds(RATE, Mix.lesson());
    Event.HandBeat held = new Event.HandBeat(Ratio.ONE, new Kriya.Hold(), false, false, 0);
    assertEquals(Optional.empty(), loose.stroke(held));
    assertTrue(loose.tick().gain() < 0.1);
  }
}
