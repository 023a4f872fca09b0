package org.matraloom.app.practise;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.matraloom.log.LogEntry;
import org.matraloom.score.Composition;
import org.matraloom.sound.Passage;

/** A drill that was played as a record of the practice log. */
final class DrillEntry {

  /** What was broken off before this was no practice. */
  private static final double SHORTEST_SECONDS = 5;

  private DrillEntry() {}

  /** The time it was played is taken for the time the voice was in use; nobody judged it. */
  static Optional<LogEntry> of(List<Passage> passages, double playedSeconds) {
    if (playedSeconds < SHORTEST_SECONDS) {
      return Optional.empty();
    }
    Composition first = passages.get(0).timeline().performance().composition();
    String title = first.title().isBlank() ? "drill" : first.title();
    return Optional.of(
        new LogEntry(
            OffsetDateTime.now(),
            LogEntry.Kind.DRILL,
            title.substring(0, Math.min(title.length(), LogEntry.LONGEST_TEXT)),
            OptionalDouble.of(first.tempo().beatsPerMinute().toDouble()),
            Optional.empty(),
            OptionalDouble.empty(),
            Math.min(LogEntry.LONGEST_SECONDS, Math.round(10 * playedSeconds) / 10.0),
            List.of(),
            Optional.empty(),
            ""));
  }
}
