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
        new LogEntry.Outcome(
            Optional.of(number % 3 != 0),
            OptionalDouble.of(-12.5),
            List.of(
                new LogEntry.RoundEntry(1, 4, 60.2, true),
                new LogEntry.RoundEntry(2, 5, 61.4, number % 3 != 0)),
            List.of(
                new PlaceNote(new ScorePlace(ScorePlace.Kind.INTO, 2, "4>5"), 31.2),
                new PlaceNote(new ScorePlace(ScorePlace.Kind.PHRASE, 2, "மழை"), -4))),
        30,
        Optional.of("sha256:" + Integer.toHexString(number)),
        "நீர் \"" + number + "\"\n\\");
  }

  static LogEntry take(OffsetDateTime when, double tempo, boolean clean) {
    return new LogEntry(
        when,
        LogEntry.Kind.TAKE,
        PIECE,
        OptionalDouble.of(tempo),
        new LogEntry.Outcome(Optional.of(clean), OptionalDouble.empty(), List.of()),
        20,
        Optional.empty(),
        "");
  }

  /** A take that was so late at one place. */
  static LogEntry late(OffsetDateTime when, ScorePlace place, double off) {
    return late(when, List.of(new PlaceNote(place, off)));
  }

  static LogEntry late(OffsetDateTime when, List<PlaceNote> places) {
    return new LogEntry(
        when,
        LogEntry.Kind.TAKE,
        PIECE,
        OptionalDouble.of(60),
        new LogEntry.Outcome(Optional.of(false), OptionalDouble.empty(), List.of(), places),
        20,
        Optional.empty(),
        "");
  }

  static LogEntry voiced(OffsetDateTime when, double minutes) {
    return new LogEntry(
        when,
        LogEntry.Kind.NOTE,
        PIECE,
        OptionalDouble.empty(),
        LogEntry.Outcome.UNKNOWN,
        minutes * 60,
        Optional.empty(),
        "");
  }
}
