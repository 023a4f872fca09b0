package org.matraloom.app.practise;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.matraloom.log.LogEntry;

class DrillEntryTest {

  private final MadeDrill made;

  DrillEntryTest() throws IOException {
    made =
        DrillToPlay.of(
            "switch 4 5 --every halving --tempo 60",
            new PrintWriter(new StringWriter()),
            new PrintWriter(new StringWriter()));
  }

  @Test
  void aDrillIsNotedWithItsTempoAndItsTimeAndNoVerdict() {
    LogEntry entry = DrillEntry.of(made.passages(), 93.26).orElseThrow();
    assertEquals(LogEntry.Kind.DRILL, entry.kind());
    assertEquals(60, entry.tempo().orElseThrow());
    assertEquals(93.3, entry.voicedSeconds());
    assertEquals(Optional.empty(), entry.clean());
    assertEquals(
        made.passages().get(0).timeline().performance().composition().title(), entry.piece());
  }

  @Test
  void whatWasBrokenOffAtOnceIsNotNoted() {
    assertEquals(Optional.empty(), DrillEntry.of(made.passages(), 4.9));
  }

  @Test
  void aDrillLeftPlayingForDaysIsKeptToOne() {
    assertEquals(86_400, DrillEntry.of(made.passages(), 1e6).orElseThrow().voicedSeconds());
  }
}
