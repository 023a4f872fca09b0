package org.matraloom.mouth;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Made signals: pulses of a voice of 110 Hz, one of them before the vowel. */
class VowelRiseTest {

  private static final int RATE = 48_000;
  private static final int VOWEL = 4_800;
  private static final int PERIOD = RATE / 110;

  /** Damped swings of 400 Hz, as a first formant, with one so strong a period before the vowel. */
  private static float[] sound(double before) {
    float[] sound = new float[2 * VOWEL];
    for (int pulse = -1; pulse < 8; pulse++) {
      int at = VOWEL + pulse * PERIOD;
      for (int i = 0; i < PERIOD; i++) {
        double swing = Math.exp(-i / 150.0) * Math.sin(2 * Math.PI * 400 * i / RATE);
        sound[at + i] += (float) ((pulse < 0 ? before : 0.5) * swing);
      }
    }
    return sound;
  }

  /** Ms from the vowel to where the band has climbed half of its way (Cummins and Port 1998). */
  private static double halfWayMs(float[] sound) {
    BandLevel level = BandLevel.of(sound, 0, sound.length, OnsetBand.VOICE, RATE);
    int from = VOWEL - PERIOD - RATE / 200;
    int top = level.top(VOWEL, VOWEL + PERIOD);
    double middle = (level.at(top) + level.at(level.bottom(from, top))) / 2;
    int at = from;
    while (level.at(at) < middle) {
      at++;
    }
    return 1000.0 * (at - VOWEL) / RATE;
  }

  @Test
  void aPulseBeforeTheVowelIsNotTakenForIt() {
    float[] sound = sound(0.4);
    assertTrue(halfWayMs(sound) < -5, "as it is, it is: " + halfWayMs(sound));
    float[] before = sound.clone();
    VowelRise.clear(sound, VOWEL, OnsetBand.VOICE, RATE);
    assertEquals(0, halfWayMs(sound), 5);
    for (int i = VOWEL; i < sound.length; i++) {
      assertEquals(before[i], sound[i], 0, "the vowel is the recording");
    }
  }

  @Test
  void aWeakPulseIsLeftAlone() {
    float[] sound = sound(0.1);
    float[] before = sound.clone();
    VowelRise.clear(sound, VOWEL, OnsetBand.VOICE, RATE);
    assertArrayEquals(before, sound, 1e-3f);
  }

  @Test
  void aHissIsLeftInTheBandsAbove() {
    float[] sound = sound(0.4);
    for (int i = 0; i < VOWEL; i++) {
      sound[i] += (float) (0.1 * Math.sin(2 * Math.PI * 6000 * i / RATE));
    }
    float[] plain = sound(0.4);
    VowelRise.clear(sound, VOWEL, OnsetBand.VOICE, RATE);
    VowelRise.clear(plain, VOWEL, OnsetBand.VOICE, RATE);
    double hiss = 0;
    for (int i = 0; i < VOWEL; i++) {
      hiss += Math.pow(sound[i] - plain[i], 2) / VOWEL;
    }
    assertEquals(0, 20 * Math.log10(Math.sqrt(2 * hiss) / 0.1), 1, "dB against the hiss as it was");
  }
}
