package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.matraloom.schedule.Event;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.Tempo;

/** The plain pulse marks each sollu, and a karvai rings. */
class PulseVoiceTest {

  @Test
  void aKarvaiRingsAndEveryPulseEndsQuietly() {
    Timeline timeline = Pieces.ringing(Tempo.of(60));
    List<SolluCue> cues =
        Pieces.events(timeline, Event.SolluSaid.class).stream()
            .map(said -> SolluCue.of(said, timeline.clock(48_000)))
            .toList();
    SolluSound rung = say(cues.get(0));
    SolluSound plain = say(cues.get(1));

    assertEquals(12_000, plain.samples().length);
    assertEquals(36_000, rung.samples().length);
    assertTrue(energy(rung, 6_000, 12_000) > 4 * energy(plain, 6_000, 12_000));
    for (SolluSound sound : List.of(rung, plain)) {
      float[] samples = sound.samples();
      assertEquals(0, samples[samples.length - 1]);
      for (int i = samples.length - 100; i < samples.length; i++) {
        assertEquals(0, samples[i] - 2 * samples[i - 1] + samples[i - 2], 0.01);
      }
    }
  }

  private static SolluSound say(SolluCue cue) {
    return new PulseVoice(48_000).say(Optional.empty(), cue, Optional.empty());
  }

  private static double energy(SolluSound sound, int from, int to) {
    double energy = 0;
    for (int i = from; i < to; i++) {
      energy += sound.samples()[i] * sound.samples()[i];
    }
    return energy;
  }
}
