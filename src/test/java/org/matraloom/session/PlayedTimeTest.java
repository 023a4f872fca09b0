package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class PlayedTimeTest {

  private static final long SECOND = 1_000_000_000L;

  @Test
  void onlyWhatIsPlayedCounts() {
    PlayedTime time = new PlayedTime();
    time.look(7 * SECOND, false);
    time.look(9 * SECOND, true);
    time.look(10 * SECOND, true);
    time.look(12 * SECOND, false);
    assertEquals(3, time.seconds());
    time.look(20 * SECOND, true);
    time.look(20 * SECOND + SECOND / 2, true);
    assertEquals(3.5, time.seconds());
  }
}
