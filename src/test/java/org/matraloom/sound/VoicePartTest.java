package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.matraloom.schedule.Timeline;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;
import org.matraloom.voice.SolluCue;
import org.matraloom.voice.SolluVoice;
import org.matraloom.voice.SolluWave;

/** A voice is asked for each sollu once, sees its neighbours, and may begin before the beat. */
class VoicePartTest {

  private static final int RATE = 48_000;
  private static final int LEAD = 700;

  private final List<SolluCue> asked = new ArrayList<>();
  private final List<Optional<SolluCue>> seenBefore = new ArrayList<>();
  private final List<Optional<SolluCue>> seenAfter = new ArrayList<>();

  /** Says every sollu as a consonant of 700 frames and a vowel of 300, all of one height. */
  private final SolluVoice voice =
      new SolluVoice() {
        @Override
        public int ratePerSecond() {
          return RATE;
        }

        @Override
        public int longestLeadFrames() {
          return LEAD + 50;
        }

        @Override
        public SolluWave say(Optional<SolluCue> before, SolluCue cue, Optional<SolluCue> after) {
          asked.add(cue);
          seenBefore.add(before);
          seenAfter.add(after);
          float[] samples = new float[LEAD + 300];
          java.util.Arrays.fill(samples, 0, LEAD, 0.25f);
          java.util.Arrays.fill(samples, LEAD, samples.length, 0.5f);
          return new SolluWave(samples, LEAD);
        }
      };

  private float[] rendered(Timeline timeline) {
    Mix mix = Mix.lesson().only(Set.of(MixPart.VOICE));
    Renderer renderer = new Renderer(timeline, timeline.clock(RATE), mix, voice, 1);
    float[] mono = new float[(int) Renderer.lengthFrames(timeline, timeline.clock(RATE))];
    assertEquals(mono.length, renderer.render(mono, mono.length));
    return mono;
  }

  @Test
  void theVowelFallsOnTheGridAndTheConsonantBeforeIt() {
    Timeline timeline = Pieces.adi80(Tempo.of(60), 1);
    float[] mono = rendered(timeline);
    assertEquals(240, asked.size());
    for (SolluCue cue : asked) {
      int grid = (int) cue.startFrame();
      assertEquals(0, mono[grid - LEAD - 1]);
      assertTrue(mono[grid - LEAD] > 0);
      assertEquals(2 * mono[grid - 1], mono[grid], 1e-6);
      assertEquals(0, mono[grid + 300]);
    }
  }

  @Test
  void aConsonantBeforeFrameNoughtIsCut() {
    float[] mono = rendered(Pieces.adi80(Tempo.of(60), 0));
    assertTrue(mono[0] > 0);
    double full = mono[(int) asked.get(120).startFrame()];
    assertEquals(full / 2, mono[0], 1e-4, "the vowel of the first sollu, softly");
  }

  @Test
  void neighboursAndLengthsAreTold() {
    Timeline timeline = Pieces.ringing(Tempo.of(60));
    rendered(timeline);
    assertEquals(8, asked.size());
    assertEquals(Optional.empty(), seenBefore.get(0));
    assertEquals(Optional.empty(), seenAfter.get(7));
    for (int i = 1; i < 8; i++) {
      assertEquals(Optional.of(asked.get(i - 1)), seenBefore.get(i));
      assertEquals(Optional.of(asked.get(i)), seenAfter.get(i - 1));
    }
    for (int i = 0; i < 8; i += 2) {
      assertEquals(Ratio.of(1, 4), asked.get(i).said().spoken().ownBeats());
      assertEquals(36_000, asked.get(i).lengthFrames(), "one matra and a karvai of two");
      assertEquals(12_000, asked.get(i + 1).lengthFrames());
    }
  }

  @Test
  void aMutedVoiceIsNotAsked() {
    Timeline timeline = Pieces.ringing(Tempo.of(60));
    Mix mix = Mix.lesson().without(Set.of(MixPart.VOICE));
    Renderer renderer = new Renderer(timeline, timeline.clock(RATE), mix, voice, 1);
    renderer.render(new float[RATE], RATE);
    assertEquals(List.of(), asked);
  }
}
