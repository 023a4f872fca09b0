package org.matraloom.log;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
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

  /** After this many minutes of voice a longer rest is suggested. */
  public static final int LONG_REST_AFTER_MINUTES = 30;

  private static final double MINUTE = 60;

  /**
   * Sums the log.
   *
   * @param history the log
   * @param now the moment it is asked; its day and clock count
   * @return the sums
   */
  public static VoicedTime of(History history, OffsetDateTime now) {
    List<Entry> until =
        history.entries().stream().filter(entry -> !entry.when().isAfter(now)).toList();
    double today =
        until.stream().filter(entry -> isToday(entry, now)).mapToDouble(Entry::voicedSeconds).sum();
    return new VoicedTime(today, sinceRest(until, now));
  }

  private static boolean isToday(Entry entry, OffsetDateTime now) {
    return entry
        .when()
        .withOffsetSameInstant(now.getOffset())
        .toLocalDate()
        .equals(now.toLocalDate());
  }

  private static double sinceRest(List<Entry> entries, OffsetDateTime now) {
    double sum = 0;
    OffsetDateTime voicedFrom = now;
    for (int i = entries.size() - 1; i >= 0; i--) {
      Entry entry = entries.get(i);
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
   * What the voice needs: a quiet reminder after {@value Care#REST_AFTER_MINUTES} minutes, a
   * stronger one after {@value #LONG_REST_AFTER_MINUTES}.
   *
   * <p>No safe voice load is agreed on (National Center for Voice and Speech, article on vocal
   * dosimetry); short silent breaks through the day are common advice (Duke Health, "vocal
   * pacing"). The numbers are habits of our own.
   *
   * @return sentences, none if there is nothing to say
   */
  public List<String> reminders() {
    List<String> sentences = new ArrayList<>();
    if (sinceRestSeconds > LONG_REST_AFTER_MINUTES * MINUTE) {
      sentences.add("Rest the voice for 5 to 10 minutes now, and drink some water.");
    } else if (sinceRestSeconds > Care.REST_AFTER_MINUTES * MINUTE) {
      sentences.add("Time for two minutes of silent tala and a sip of water.");
    }
    if (!sentences.isEmpty()) {
      sentences.add(
          "Stop on pain; ask a doctor about a voice that is hoarse for more than a few days."
              + " These are general cautions, not medical advice.");
    }
    return sentences;
  }
}
