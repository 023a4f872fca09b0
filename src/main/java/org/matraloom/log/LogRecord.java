package org.matraloom.log;

import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;

/** What a line of the log can be. */
sealed interface LogRecord permits LogEntry, LogRecord.Withdrawal {

  /**
   * A line that takes an earlier one back: of those of its piece and time, to the second, the last
   * before it that is not taken back yet.
   *
   * @param when when it was taken back
   * @param piece the piece of the earlier line
   * @param withdraws the time of the earlier line
   */
  record Withdrawal(OffsetDateTime when, String piece, OffsetDateTime withdraws)
      implements LogRecord {

    boolean isAbout(LogEntry entry) {
      return entry.piece().equals(piece)
          && entry.when().truncatedTo(ChronoUnit.SECONDS).isEqual(withdraws);
    }
  }
}
