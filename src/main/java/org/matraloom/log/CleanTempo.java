package org.matraloom.log;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * How fast something was said, take by take.
 *
 * @param piece the piece
 * @param round which round of it, from 1; {@link #WHOLE} for the piece as a whole
 * @param points its takes with a tempo and a verdict, oldest first
 */
public record CleanTempo(String piece, int round, List<Point> points) {

  /** Stands for the whole piece where a round is named. */
  public static final int WHOLE = 0;

  /**
   * One take.
   *
   * @param when when it ended
   * @param nadai matras a beat; 0 for a whole piece or if nobody knows
   * @param tempo beats a minute
   * @param clean whether it passed
   */
  public record Point(OffsetDateTime when, int nadai, double tempo, boolean clean) {
    LocalDate day() {
      return when.toLocalDate();
    }
  }

  /** Copies the list. */
  public CleanTempo {
    points = List.copyOf(points);
  }

  /**
   * The takes of a piece: the whole first, then each round that was ever judged.
   *
   * @param history the log
   * @param piece its name
   * @return at least the whole, which may have no points
   */
  public static List<CleanTempo> of(History history, String piece) {
    TreeMap<Integer, List<Point>> points = new TreeMap<>();
    points.put(WHOLE, new ArrayList<>());
    for (LogEntry entry : history.of(piece)) {
      if (entry.clean().isPresent() && entry.tempo().isPresent()) {
        points
            .get(WHOLE)
            .add(new Point(entry.when(), 0, entry.tempo().getAsDouble(), entry.clean().get()));
      }
      for (LogEntry.RoundEntry round : entry.rounds()) {
        points
            .computeIfAbsent(round.round(), number -> new ArrayList<>())
            .add(new Point(entry.when(), round.nadai(), round.tempo(), round.clean()));
      }
    }
    return points.entrySet().stream()
        .map(row -> new CleanTempo(piece, row.getKey(), row.getValue()))
        .toList();
  }

  /**
   * The days with a take.
   *
   * @return by the clock where the take was made, ascending
   */
  public List<LocalDate> days() {
    TreeSet<LocalDate> days = new TreeSet<>();
    points.forEach(point -> days.add(point.day()));
    return List.copyOf(days);
  }

  /**
   * The takes of one day.
   *
   * @param day the day
   * @return how many
   */
  public long takes(LocalDate day) {
    return points.stream().filter(point -> point.day().equals(day)).count();
  }

  /**
   * The fastest clean take of one day.
   *
   * @param day the day
   * @return beats a minute; empty if none was clean
   */
  public OptionalDouble fastestClean(LocalDate day) {
    return points.stream()
        .filter(point -> point.clean() && point.day().equals(day))
        .mapToDouble(Point::tempo)
        .max();
  }
}
