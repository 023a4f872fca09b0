package org.matraloom.log;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One place of a piece over all takes in which it was measured.
 *
 * @param place the place
 * @param points the takes, oldest first, at least one
 */
public record PlaceHistory(ScorePlace place, List<Point> points) {

  private static final Comparator<ScorePlace> AS_SHOWN =
      Comparator.comparing(ScorePlace::kind).thenComparing(ScorePlace::round);

  /**
   * One take.
   *
   * @param when when it ended
   * @param off how late, in ms, or how fast, in percent; negative if early or slow
   */
  public record Point(OffsetDateTime when, double off) {}

  /** Copies the list. */
  public PlaceHistory {
    points = List.copyOf(points);
  }

  /**
   * All places of a piece that any measured take has.
   *
   * <p>The landing and the tempo of rounds are known of every take; the rest of those whose record
   * keeps it. Notes by hand and drills do not count. A place that a take passes twice counts with
   * the mean.
   *
   * @param history the log
   * @param piece its name
   * @return by kind and round; phrases of a round as they first came
   */
  public static List<PlaceHistory> of(History history, String piece) {
    Map<ScorePlace, List<Point>> points = new LinkedHashMap<>();
    for (LogEntry entry : takes(history, piece)) {
      notes(entry)
          .forEach(
              (place, off) ->
                  points
                      .computeIfAbsent(place, key -> new ArrayList<>())
                      .add(new Point(entry.when(), off)));
    }
    return points.entrySet().stream()
        .map(row -> new PlaceHistory(row.getKey(), row.getValue()))
        .sorted(Comparator.comparing(PlaceHistory::place, AS_SHOWN))
        .toList();
  }

  /**
   * The measured takes of a piece.
   *
   * @param history the log
   * @param piece its name
   * @return oldest first
   */
  public static List<LogEntry> takes(History history, String piece) {
    return history.of(piece).stream().filter(entry -> entry.kind() == LogEntry.Kind.TAKE).toList();
  }

  /**
   * How far off one take was, at every place that is known.
   *
   * @param entry a take
   * @return late in ms, fast in percent; phrases as they first came
   */
  public static Map<ScorePlace, Double> notes(LogEntry entry) {
    Map<ScorePlace, List<Double>> all = new LinkedHashMap<>();
    entry
        .landingErrorMs()
        .ifPresent(ms -> add(new ScorePlace(ScorePlace.Kind.LANDING, 0, ""), ms, all));
    entry.outcome().places().forEach(note -> add(note.place(), note.off(), all));
    if (entry.tempo().isPresent() && entry.rounds().size() > 1) {
      double tempo = entry.tempo().getAsDouble();
      for (LogEntry.RoundEntry round : entry.rounds()) {
        ScorePlace place = new ScorePlace(ScorePlace.Kind.ROUND, round.round(), "");
        add(place, 100 * (round.tempo() / tempo - 1), all);
      }
    }
    Map<ScorePlace, Double> means = new LinkedHashMap<>();
    all.forEach(
        (place, values) ->
            means.put(
                place, values.stream().mapToDouble(Double::doubleValue).average().orElseThrow()));
    return means;
  }

  private static void add(ScorePlace place, double off, Map<ScorePlace, List<Double>> all) {
    all.computeIfAbsent(place, key -> new ArrayList<>()).add(off);
  }

  /**
   * The mean.
   *
   * @return late in ms, or fast in percent
   */
  public double mean() {
    return points.stream().mapToDouble(Point::off).average().orElseThrow();
  }

  /**
   * The standard deviation from take to take.
   *
   * @return in the unit of the place; 0 for a single take
   */
  public double spread() {
    if (points.size() < 2) {
      return 0;
    }
    double mean = mean();
    double squares = points.stream().mapToDouble(p -> (p.off() - mean) * (p.off() - mean)).sum();
    return Math.sqrt(squares / (points.size() - 1));
  }

  /**
   * In how many takes it was on the same side as its mean.
   *
   * @return 0 to all
   */
  public long sameSide() {
    double mean = mean();
    return points.stream().filter(point -> point.off() * mean > 0).count();
  }

  /** The takes from one to another, without that. */
  PlaceHistory part(int from, int to) {
    return new PlaceHistory(place, points.subList(from, to));
  }
}
