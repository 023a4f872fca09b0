package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A hand in the count-in, and a quiet room without one. */
class GuideHeardTest {

  private static final int RATE = 44_100;
  private static final double FRAMES_PER_BEAT = 0.75 * RATE;

  private static float[] room(double noise, double strokes, long seed) {
    Random random = new Random(seed);
    float[] sound = new float[(int) (6.4 * FRAMES_PER_BEAT)];
    for (int i = 0; i < sound.length; i++) {
      double since = (i - 0.4 * FRAMES_PER_BEAT) % FRAMES_PER_BEAT;
      double stroke = since < 0 ? 0 : strokes * Math.exp(-since / (0.01 * RATE));
      sound[i] = (float) ((noise + stroke) * random.nextGaussian());
    }
    return sound;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.0003, 0.003, 0.03})
  void aRoomWithoutAHandIsQuietHoweverLoudItIs(double noise) {
    for (long seed = 1; seed <= 40; seed++) {
      assertFalse(
          GuideHeard.countedDb(
                  room(noise, 0, seed), (long) (0.4 * FRAMES_PER_BEAT), FRAMES_PER_BEAT, RATE)
              .isPresent());
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.1})
  void aHandAboveTheNoiseIsHeard(double strokes) {
    double db =
        GuideHeard.countedDb(
                room(0.0003, strokes, 1), (long) (0.4 * FRAMES_PER_BEAT), FRAMES_PER_BEAT, RATE)
            .orElseThrow();
    assertEquals(20 * Math.log10(strokes), db, 12, "the peak of some noise of that level");
  }
}
