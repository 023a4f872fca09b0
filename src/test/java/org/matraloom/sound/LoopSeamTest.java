package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.matraloom.notation.ScoreReader;
import org.matraloom.practice.JoinDrill;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Composition;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;

/** Loops of a join, whose eight beats of adi at 72 are exactly 320 000 frames. */
class LoopSeamTest {

  private static final int RATE = 48_000;
  private static final int LOOP_FRAMES = 320_000;

  private static final String SONG =
      """
      tala adi
      tempo 72
      Song = (takadimi takajunu) x2 tadiginatom , , ,
      perform
        Song x2 nadai 4
        Song    nadai 5
      """;

  @Test
  void everyLoopHasTheSameSamples() {
    Timeline loop = loop();
    float[] samples = Rendered.mono(loop, RATE, Mix.lesson());
    int start = start(loop) + LOOP_FRAMES;
    float[] second = Arrays.copyOfRange(samples, start, start + LOOP_FRAMES);
    for (int time = 1; time < 4; time++) {
      int from = start + time * LOOP_FRAMES;
      assertArrayEquals(second, Arrays.copyOfRange(samples, from, from + LOOP_FRAMES));
    }
  }

  /**
   * A click is a jump: a second difference at the seam larger than any inside the loop. The hand
   * would hide it.
   */
  @Test
  void noSeamClicks() {
    Timeline loop = loop();
    float[] samples = Rendered.mono(loop, RATE, Mix.lesson().only(Set.of(MixPart.VOICE)));
    int start = start(loop);
    double inside = 0;
    for (int i = start + 500; i < start + LOOP_FRAMES - 500; i++) {
      inside = Math.max(inside, bend(samples, i));
    }
    for (int time = 1; time < 5; time++) {
      int seam = start + time * LOOP_FRAMES;
      for (int i = seam - 400; i < seam + 400; i++) {
        assertTrue(bend(samples, i) <= inside, "at frame " + i);
      }
    }
    assertTrue(inside > 0);
  }

  private static Timeline loop() {
    Composition song =
        ScoreReader.read(SONG, "song.loom", Lexicon.standard()).composition().orElseThrow();
    return ScoreTimeline.of(Performance.of(JoinDrill.of(song, 1, 4, 6, Lexicon.standard())), 1);
  }

  private static int start(Timeline loop) {
    return Math.toIntExact(loop.clock(RATE).frameAt(loop.performance().startBeat()));
  }

  private static double bend(float[] samples, int at) {
    return Math.abs(samples[at - 1] - 2 * samples[at] + samples[at + 1]);
  }
}
