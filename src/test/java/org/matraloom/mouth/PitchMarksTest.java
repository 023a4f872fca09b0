package org.matraloom.mouth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** One mark in each period of a tone whose periods are known. */
class PitchMarksTest {

  /** Harmonics of a gliding tone; the one near a formant is as strong as is asked for. */
  private static float[] tone(double fromHz, double toHz, double second) {
    float[] sound = new float[Kit.RATE / 2];
    double phase = 0;
    for (int i = 0; i < sound.length; i++) {
      phase += 2 * Math.PI * (fromHz + (toHz - fromHz) * i / sound.length) / Kit.RATE;
      sound[i] =
          (float)
              (0.15 * Math.cos(phase)
                  + 0.15 * second * Math.cos(2 * phase)
                  + 0.08 * Math.cos(3 * phase)
                  + 0.04 * Math.cos(4 * phase));
    }
    return sound;
  }

  @Test
  void theyFollowAGlide() {
    float[] sound = tone(100, 140, 1);
    List<Integer> marks = PitchMarks.of(sound, 0, sound.length, 0);
    // 60 periods in half a second at 120 Hz on average; the ends lack some.
    assertEquals(57, marks.size(), 3);
    double last = marks.get(marks.size() - 1) - marks.get(marks.size() - 2);
    assertEquals(139, Kit.RATE / last, 4);
    for (int i = 1; i < marks.size(); i++) {
      double hz = (double) Kit.RATE / (marks.get(i) - marks.get(i - 1));
      double asked = 100 + 40.0 * marks.get(i) / sound.length;
      assertEquals(1, hz / asked, 0.03, "period " + i);
    }
  }

  @Test
  void aStrongSecondHarmonicIsNoOctave() {
    float[] sound = tone(210, 200, 6);
    List<Integer> marks = PitchMarks.of(sound, 0, sound.length, Kit.RATE / 205.0);
    assertTrue(marks.size() > 90, "marks: " + marks.size());
    double hz =
        (double) Kit.RATE * (marks.size() - 1) / (marks.get(marks.size() - 1) - marks.get(0));
    assertEquals(205, hz, 3);
  }

  @Test
  void noiseAndSilenceHaveNone() {
    assertEquals(List.of(), PitchMarks.of(new float[20_000], 0, 20_000, 0));
    float[] noise = new float[20_000];
    long state = 1;
    for (int i = 0; i < noise.length; i++) {
      state = state * 6_364_136_223_846_793_005L + 1_442_695_040_888_963_407L;
      noise[i] = (state >> 40) / (float) (1 << 24);
    }
    assertTrue(PitchMarks.of(noise, 0, noise.length, 0).size() < 8);
  }
}
