package org.matraloom.log;

import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;

/** What a line of the log can be. */
sealed interface LogRecord permits LogEntry, LogRecord.Withdrawal, LogRecord.UsualVoice {

  /**
   * A line that says with which recorded voice takes are measured from now on.
   *
   * @param when when that was said
   * @param voice its name or its folder, or a word that stands for none; not blank
   */
  record UsualVoice(OffsetDateTime when, String voice) implements LogRecord {

    public UsualVoice {
      if (voice.isBlank() || voice.length() > LogEntry.LONGEST_TEXT) {
        throw new IllegalArgumentException("voice is out of range: " + voice);
      }
    }
  }

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
