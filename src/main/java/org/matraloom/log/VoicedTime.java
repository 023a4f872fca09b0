package org.matraloom.log;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.matraloom.breath.Care;

/**
 * How long the voice was in use.
 *
 * @param todaySeconds since midnight
 * @param sinceRestSeconds since the last rest of {@value #REST_MINUTES} minutes or more; 0 while
 *     resting that long
 */
public record VoicedTime(double todaySeconds, double sinceRestSeconds) {

  /** A rest is at least this long, in minutes. */
  public static final int REST_MINUTES = 5;

  private static final double MINUTE = 60;

  /**
   * Sums the log.
   *
   * @param history the log
   * @param now the moment it is asked; its day and clock count
   * @return the sums
   */
  public static VoicedTime of(History history, OffsetDateTime now) {
    List<LogEntry> until =
        history.entries().stream().filter(entry -> !entry.when().isAfter(now)).toList();
    double today =
        until.stream()
            .filter(entry -> isToday(entry, now))
            .mapToDouble(LogEntry::voicedSeconds)
            .sum();
    return new VoicedTime(today, sinceRest(until, now));
  }

  private static boolean isToday(LogEntry entry, OffsetDateTime now) {
    return entry
        .when()
        .withOffsetSameInstant(now.getOffset())
        .toLocalDate()
        .equals(now.toLocalDate());
  }

  private static double sinceRest(List<LogEntry> entries, OffsetDateTime now) {
    double sum = 0;
    OffsetDateTime voicedFrom = now;
    for (int i = entries.size() - 1; i >= 0; i--) {
      LogEntry entry = entries.get(i);
      if (entry.voicedSeconds() == 0) {
        continue;
      }
      if (Duration.between(entry.when(), voicedFrom).toMinutes() >= REST_MINUTES) {
        break;
      }
      sum += entry.voicedSeconds();
      voicedFrom = entry.when().minusSeconds(Math.round(entry.voicedSeconds()));
    }
    return sum;
  }

  /**
   * What the voice needs: a quiet reminder to rest after more than {@value Care#REST_AFTER_MINUTES}
   * voiced minutes since the last rest.
   *
   * <p>No safe voice load is agreed on (National Center for Voice and Speech, article on vocal
   * dosimetry); short silent breaks through the day are common advice (Duke Health, "vocal
   * pacing"). The numbers are habits of our own.
   *
   * @return a few sentences, or nothing if there is nothing to say
   */
  public Optional<String> reminder() {
    if (sinceRestSeconds <= Care.REST_AFTER_MINUTES * MINUTE) {
      return Optional.empty();
    }
    return Optional.of(
        "That is more than "
            + Care.REST_AFTER_MINUTES
            + " voiced minutes: rest the voice, and drink some water. Stop on pain or dizziness;"
            + " a voice that is hoarse for more than a few days needs a doctor."
            + " These are general cautions, not medical advice.");
  }
}
