package org.matraloom.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Frames of sound and pictures of a film, each from its own place. */
class PictureClockTest {

  @ParameterizedTest
  @CsvSource({
    "30, 48000, 0, 0",
    "30, 48000, 799, 0",
    "30, 48000, 800, 1",
    "30, 48000, 1600, 1",
    "25, 44100, 1764, 1",
    "60, 48000, 48000, 60",
    "30, 44100, 158760000, 108000"
  })
  void theNearestPictureIsTaken(int pictures, int rate, long frame, long picture) {
    assertEquals(picture, new PictureClock(pictures, rate).pictureAt(frame));
  }

  @Test
  void noPictureIsMoreThanHalfAPictureFromItsSound() {
    Random random = new Random(21);
    int checked = 0;
    for (int pictures : new int[] {25, 30, 60}) {
      PictureClock clock = new PictureClock(pictures, 48_000);
      for (int trial = 0; trial < 2_000; trial++) {
        long frame = random.nextLong(48_000L * 3_600 * 10);
        long off = Math.abs(clock.pictureAt(frame) * 48_000 - frame * pictures);
        assertTrue(2 * off <= 48_000, frame + " is off by " + off);
        assertTrue(Math.abs(frame - 48 * clock.millisecondsAt(frame)) <= 24);
        checked++;
      }
    }
    assertEquals(6_000, checked);
  }

  @Test
  void theLastPictureThatIsBegunCounts() {
    PictureClock clock = new PictureClock(30, 48_000);
    assertEquals(1, clock.picturesFor(1));
    assertEquals(1, clock.picturesFor(1_600));
    assertEquals(2, clock.picturesFor(1_601));
    assertEquals(1_600, clock.frameAt(1));
    assertEquals(192_000, clock.framesIn(4));
  }

  @Test
  void whatIsNoFilmIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new PictureClock(0, 48_000));
    assertThrows(IllegalArgumentException.class, () -> new PictureClock(121, 48_000));
    assertThrows(IllegalArgumentException.class, () -> new PictureClock(30, 7_999));
  }
}
