package org.matraloom.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Levels, mutes and sides of the parts. */
class MixTest {

  /** The balance that is common practice for a practice track; counts between -10 and -14 dB. */
  @ParameterizedTest
  @CsvSource({"CLAP, 0, 0", "COUNT, -12, -12", "WAVE, -6, -6", "TICK, -18, -18", "VOICE, -3, -9"})
  void balance(MixPart part, double lessonDb, double practiceDb) {
    assertEquals(lessonDb, Mix.lesson().channels().get(part).levelDb());
    assertEquals(practiceDb, Mix.practice().channels().get(part).levelDb());
    assertTrue(Mix.lesson().sounds(part) && Mix.practice().sounds(part));
    assertEquals(2, Mix.lesson().samamDb());
  }

  @Test
  void gainsAreDecibelsUnderFullScale() {
    assertEquals(0.501187, Mix.lesson().gains(MixPart.CLAP, 0).left(), 1e-6);
    assertEquals(0.630957, Mix.lesson().gains(MixPart.CLAP, 2).left(), 1e-6);
    assertEquals(0.125893, Mix.lesson().gains(MixPart.COUNT, 0).right(), 1e-6);
    assertEquals(0.251189, Mix.lesson().withOutput(6).gains(MixPart.COUNT, 0).right(), 1e-6);
  }

  @Test
  void onlyAndWithoutAreComplements() {
    Mix only = Mix.lesson().only(Set.of(MixPart.CLAP, MixPart.VOICE));
    Mix without =
        Mix.lesson()
            .without(
                Set.of(
                    MixPart.COUNT,
                    MixPart.WAVE,
                    MixPart.TICK,
                    MixPart.BREATH,
                    MixPart.DRONE,
                    MixPart.SECOND,
                    MixPart.DRUM));
    assertEquals(only, without);
    assertTrue(only.sounds(MixPart.VOICE));
    assertFalse(only.sounds(MixPart.TICK));
    assertFalse(only.without(Set.of(MixPart.VOICE)).sounds(MixPart.TICK), "a mute stays");
  }

  @Test
  void panningTakesAwayFromOneSideOnly() {
    Mix.Gains centre = Mix.lesson().gains(MixPart.CLAP, 0);
    Mix.Gains left = Mix.lesson().withPan(MixPart.CLAP, -1).gains(MixPart.CLAP, 0);
    Mix.Gains halfRight = Mix.lesson().withPan(MixPart.CLAP, 0.5).gains(MixPart.CLAP, 0);
    assertEquals(centre.left(), centre.right());
    assertEquals(centre.left(), left.left());
    assertEquals(0, left.right());
    assertEquals(centre.right(), halfRight.right());
    assertEquals(0.5 * centre.left(), halfRight.left(), 1e-7);
    assertEquals(centre, Mix.lesson().withPan(MixPart.CLAP, 1).centredGains(MixPart.CLAP, 0));
  }

  @Test
  void refusesWhatIsOutOfRange() {
    assertThrows(IllegalArgumentException.class, () -> Mix.lesson().withPan(MixPart.CLAP, 1.5));
    assertThrows(IllegalArgumentException.class, () -> Mix.lesson().withLevel(MixPart.CLAP, 25));
    assertThrows(IllegalArgumentException.class, () -> Mix.lesson().withOutput(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Mix(Map.of(), 0, 0, false, 0));
  }
}
