package org.matraloom.mouth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.matraloom.voice.PhoneSyllable;

/**
 * Made signals whose parts are known: a voice of 200 Hz that is closed (its two lowest partials) or
 * open (all up to 3400 Hz).
 */
class VowelFinderTest {

  private static final int MS = Kit.RATE / 1000;
  private static final int ONSET = 100 * MS;
  private static final int VOWEL_MS = 200;
  private static final int HZ = 200;

  /** How strong a partial is behind closed lips; one of an open vowel has 0.15. */
  private static final double CLOSED = 0.1;

  /** Partials 10 dB under those of an open vowel, made for this test. */
  private static final double BEHIND_STOP = 0.045;

  private final float[] sound = new float[ONSET + 700 * MS];

  private void voice(int fromMs, int forMs, double level, int partials) {
    for (int i = fromMs * MS; i < (fromMs + forMs) * MS; i++) {
      double edge = Math.min(1, Math.min(i - fromMs * MS, (fromMs + forMs) * MS - i) / (3.0 * MS));
      double sum = 0;
      for (int partial = 1; partial <= partials; partial++) {
        sum += Math.cos(2 * Math.PI * partial * HZ * i / Kit.RATE) / Math.sqrt(partial);
      }
      sound[ONSET + i] += (float) (edge * level * sum);
    }
  }

  private SamplePlacer.Placed place(int vowelMs, String... phones) {
    return SamplePlacer.place(
            sound,
            0,
            ONSET,
            ONSET + (vowelMs + VOWEL_MS + 40) * MS,
            PhoneSyllable.of(List.of(phones)),
            (double) Kit.RATE / HZ)
        .orElseThrow();
  }

  private static void atMs(double asked, SamplePlacer.Placed placed, int place) {
    assertEquals(asked, (placed.begin() + place - ONSET) / (double) MS, 5);
  }

  /** A voice, the 6 ms of noise with which a mouth opens, and the vowel. */
  private SamplePlacer.Placed voicedStop(int closedMs, double level) {
    Arrays.fill(sound, 0);
    voice(0, closedMs, level, 2);
    Random noise = new Random(3);
    for (int i = closedMs * MS; i < (closedMs + 6) * MS; i++) {
      sound[ONSET + i] += (float) (0.2 * (noise.nextDouble() - 0.5));
    }
    voice(closedMs + 6, VOWEL_MS, 0.15, 17);
    return place(closedMs + 6, "d", "i");
  }

  @Test
  void aVoiceBehindAClosedMouthIsNoVowelHoweverLongItGoesOn() {
    for (double level : List.of(BEHIND_STOP, CLOSED)) {
      for (int closedMs : List.of(60, 140, 220)) {
        SamplePlacer.Placed placed = voicedStop(closedMs, level);
        atMs(closedMs, placed, placed.places().release());
        atMs(closedMs + 6, placed, placed.places().vowel());
        assertFalse(placed.doubts().contains("its vowel begins late"), placed.doubts().toString());
      }
    }
  }

  /** One that is nearly as strong as the vowel is still taken for it when it is so short. */
  @Test
  void aShortVoiceBehindAClosedMouthIsNoVowelWhereItIsWeak() {
    for (int closedMs : List.of(20, 36)) {
      SamplePlacer.Placed placed = voicedStop(closedMs, BEHIND_STOP);
      atMs(closedMs + 6, placed, placed.places().vowel());
    }
  }

  @Test
  void aMurmurMayBeLong() {
    for (int murmurMs : List.of(60, 150, 230)) {
      Arrays.fill(sound, 0);
      voice(0, murmurMs + 1, CLOSED, 2);
      voice(murmurMs, VOWEL_MS, 0.15, 17);
      SamplePlacer.Placed placed = place(murmurMs, "n", "u");
      atMs(murmurMs, placed, placed.places().vowel());
      assertFalse(placed.doubts().contains("its vowel begins late"), placed.doubts().toString());
      assertTrue(placed.places().vowel() - placed.places().release() <= 95 * MS);
    }
  }

  @Test
  void theVowelOfATrillBeginsAfterItsLastStrike() {
    for (int strikes : List.of(1, 2, 4)) {
      Arrays.fill(sound, 0);
      for (int strike = 0; strike < strikes; strike++) {
        voice(45 * strike, 25, 0.12, 17);
      }
      voice(45 * strikes, VOWEL_MS, 0.15, 17);
      SamplePlacer.Placed placed = place(45 * strikes, "r", "a");
      atMs(45 * strikes, placed, placed.places().vowel());
    }
  }
}
