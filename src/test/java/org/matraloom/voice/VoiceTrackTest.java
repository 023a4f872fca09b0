package org.matraloom.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A track jumps, or approaches by the factor e in each time constant. */
class VoiceTrackTest {

  private static final double STEP = 0.0005;

  @Test
  void staysAtRestAndJumpsWhenItIsTime() {
    VoiceTrack track = new VoiceTrack(7);
    track.approach(0.010, 3, 0);
    assertEquals(7, track.step(0.0095, STEP));
    assertEquals(3, track.step(0.010, STEP));
    assertEquals(3, track.step(0.020, 0.01));
  }

  @Test
  void approachesATargetAndThenAnother() {
    VoiceTrack track = new VoiceTrack(0);
    track.approach(0, 1, 0.010);
    track.approach(0.020, 0, 0.010);
    double value = 0;
    for (int i = 0; i < 20; i++) {
      value = track.step(i * 0.001, 0.001);
    }
    assertEquals(1 - Math.exp(-2), value, 1e-9);
    for (int i = 20; i < 30; i++) {
      value = track.step(i * 0.001, 0.001);
    }
    assertEquals((1 - Math.exp(-2)) * Math.exp(-1), value, 1e-9);
  }

  @Test
  void manyTargetsCountInTheOrderTheyWereAdded() {
    VoiceTrack track = new VoiceTrack(0);
    for (int i = 0; i < 10; i++) {
      track.approach(0.002, i, 0);
    }
    track.approach(0.001, 42, 0);
    assertEquals(0, track.step(0.001, STEP), "an earlier one begins with the last");
    assertEquals(42, track.step(0.002, STEP));
  }
}
