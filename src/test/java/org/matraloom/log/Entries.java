package org.matraloom.log;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Made-up records. */
final class Entries {

  static final OffsetDateTime EVENING = OffsetDateTime.parse("2026-03-04T19:30:00+01:00");
  static final String PIECE = "Gutter Song";

  private Entries() {}

  /** A record whose remark tells it from all others. */
  static LogEntry numbered(int number) {
    return new LogEntry(
        EVENING.plusMinutes(number),
        LogEntry.Kind.TAKE,
        PIECE,
        OptionalDouble.of(60 + number % 40),
        Optional.of(number % 3 != 0),
        OptionalDouble.of(-12.5),
        30,
        List.of(
            new LogEntry.RoundEntry(1, 4, 60.2, true),
            new LogEntry.RoundEntry(2, 5, 61.4, number % 3 != 0)),
        Optional.of("sha256:" + Integer.toHexString(number)),
        "நீர் \"" + number + "\"\n\\");
  }

  static LogEntry take(OffsetDateTime when, double tempo, boolean clean) {
    return new LogEntry(
        when,
        LogEntry.Kind.TAKE,
        PIECE,
        OptionalDouble.of(tempo),
        Optional.of(clean),
        OptionalDouble.empty(),
        20,
        List.of(),
        Optional.empty(),
        "");
  }

  static LogEntry voiced(OffsetDateTime when, double minutes) {
    return new LogEntry(
        when,
        LogEntry.Kind.NOTE,
        PIECE,
        OptionalDouble.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        minutes * 60,
        List.of(),
        Optional.empty(),
        "");
  }
}
