package org.matraloom.app.hear;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.matraloom.log.LogEntry;

/** A record of the practice log in words. */
final class EntryWords {

  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private EntryWords() {}

  /** Piece, time and what else was noted, with commas between. */
  static String of(LogEntry entry) {
    List<String> words = new ArrayList<>(List.of(entry.piece(), MINUTE.format(entry.when())));
    entry.tempo().ifPresent(tempo -> words.add(LogText.tempo(tempo) + " beats a minute"));
    entry.clean().ifPresent(clean -> words.add(verdict(clean)));
    if (entry.clean().isEmpty()) {
      entry.rounds().forEach(round -> words.add(round(round)));
    }
    if (entry.voicedSeconds() > 0) {
      words.add(LogText.minutes(entry.voicedSeconds()) + " of voice");
    }
    return String.join(", ", words);
  }

  private static String round(LogEntry.RoundEntry round) {
    return LogText.name(round.round()) + " " + verdict(round.clean());
  }

  private static String verdict(boolean clean) {
    return clean ? "clean" : "missed";
  }
}
