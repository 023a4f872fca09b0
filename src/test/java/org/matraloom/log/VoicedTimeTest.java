package org.matraloom.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VoicedTimeTest {

  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-03-04T20:00:00+01:00");

  @Test
  void onlyTodayCounts() {
    VoicedTime time =
        time(Entries.voiced(NOW.minusDays(1), 9), Entries.voiced(NOW.minusHours(2), 4));
    assertEquals(240, time.todaySeconds());
    assertEquals(0, time.sinceRestSeconds(), "two hours of rest");
  }

  @Test
  void theDayIsThatOfTheClockThatIsAsked() {
    OffsetDateTime lateElsewhere = OffsetDateTime.parse("2026-03-03T23:30:00Z");
    assertEquals(60, time(Entries.voiced(lateElsewhere, 1)).todaySeconds(), "half past midnight");
    OffsetDateTime earlier = OffsetDateTime.parse("2026-03-03T22:30:00Z");
    assertEquals(0, time(Entries.voiced(earlier, 1)).todaySeconds());
  }

  @Test
  void whatLiesAheadIsNotCounted() {
    assertEquals(0, time(Entries.voiced(NOW.plusMinutes(1), 9)).todaySeconds());
  }

  /** The silence between two records is from the end of one to the beginning of the next. */
  @Test
  void aRestOfFiveMinutesBeginsAnew() {
    LogEntry last = Entries.voiced(NOW.minusMinutes(1), 10);
    assertEquals(600, time(Entries.voiced(NOW.minusMinutes(16), 8), last).sinceRestSeconds());
    assertEquals(1080, time(Entries.voiced(NOW.minusMinutes(15), 8), last).sinceRestSeconds());
    assertEquals(1080, time(Entries.voiced(NOW.minusMinutes(15), 8), last).todaySeconds());
  }

  @Test
  void theReminderComesAfterFifteenVoicedMinutes() {
    assertEquals(Optional.empty(), new VoicedTime(9000, 15 * 60).reminder());
    for (double seconds : new double[] {15 * 60 + 1, 30 * 60 + 1}) {
      String words = new VoicedTime(9000, seconds).reminder().orElseThrow();
      assertTrue(words.contains("more than 15 voiced minutes: rest the voice"), words);
      assertTrue(words.contains("not medical advice") && words.contains("Stop on pain"), words);
    }
  }

  private static VoicedTime time(LogEntry... entries) {
    return VoicedTime.of(new History(List.of(entries), List.of()), NOW);
  }

  @Test
  void theOrderOfTheFileDoesNotMatter() {
    List<LogEntry> backwards = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      backwards.add(Entries.voiced(NOW.minusMinutes(4L * i), 3));
    }
    History history = new History(backwards, List.of());
    assertEquals(18 * 60, VoicedTime.of(history, NOW).sinceRestSeconds());
  }
}
