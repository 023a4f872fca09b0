package org.matraloom.log;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * That a place became better or worse.
 *
 * @param better whether it is less far off than it was
 * @param since the first take of the later part
 * @param ofOneDay whether all takes are of one day, so that the clock tells the parts apart
 * @param before the takes before that
 * @param after the others
 */
public record PlaceTrend(
    boolean better,
    OffsetDateTime since,
    boolean ofOneDay,
    PlaceHistory before,
    PlaceHistory after) {

  /**
   * Looks for a trend in how far off a place is, on whichever side.
   *
   * <p>Whether there is one is told by {@link RankTrend}. The day named is that from which on a
   * step explains most of it (least squares: the difference of the means, by the root of the
   * product of how many takes are on either side); the takes of one day stay together if there are
   * several days.
   *
   * @param history the place
   * @return empty if no trend can be told
   */
  static Optional<PlaceTrend> of(PlaceHistory history) {
    List<PlaceHistory.Point> points = history.points();
    double[] off = points.stream().mapToDouble(point -> Math.abs(point.off())).toArray();
    int way = RankTrend.of(off);
    if (way == 0) {
      return Optional.empty();
    }
    boolean ofOneDay = points.stream().map(PlaceTrend::day).distinct().count() == 1;
    int best = 0;
    double highest = 0;
    for (int from = 1; from < off.length; from++) {
      boolean mayBegin = ofOneDay || !day(points.get(from)).equals(day(points.get(from - 1)));
      double step = mayBegin ? way * step(off, from) : 0;
      if (step > highest) {
        best = from;
        highest = step;
      }
    }
    if (best == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new PlaceTrend(
            way < 0,
            points.get(best).when(),
            ofOneDay,
            history.part(0, best),
            history.part(best, off.length)));
  }

  /** How well a step there explains the whole: above 0 if it goes up. */
  private static double step(double[] off, int from) {
    double before = Arrays.stream(off, 0, from).average().orElseThrow();
    double after = Arrays.stream(off, from, off.length).average().orElseThrow();
    return (after - before) * Math.sqrt((double) from * (off.length - from));
  }

  private static LocalDate day(PlaceHistory.Point point) {
    return point.when().toLocalDate();
  }

  /**
   * How far off it was before, on whichever side.
   *
   * @return the mean, in the unit of the place
   */
  public double offBefore() {
    return off(before);
  }

  /**
   * How far off it is since, on whichever side.
   *
   * @return the mean, in the unit of the place
   */
  public double offAfter() {
    return off(after);
  }

  private static double off(PlaceHistory part) {
    return part.points().stream().mapToDouble(point -> Math.abs(point.off())).average().orElse(0);
  }
}
