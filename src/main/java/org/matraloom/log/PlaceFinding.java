package org.matraloom.log;

import java.util.List;
import java.util.Optional;

/**
 * What many takes say of one place.
 *
 * @param history the place
 * @param habit in which takes it is off in one way beyond chance
 * @param trend whether it became better or worse; looked for only where there is or was a habit
 */
public record PlaceFinding(PlaceHistory history, Habitual habit, Optional<PlaceTrend> trend) {

  /** A habit is told from so many takes on. */
  public static final int LEAST_TAKES = 3;

  /** In so many of a hundred logs of pure chance at most some place is told as a habit. */
  public static final int FALSE_IN_HUNDRED = 2;

  private static final double LEAST_ERRORS = 2;

  /** Records keep tenths: no spread is known better than that. */
  private static final double ROUNDING = 0.1 / Math.sqrt(12);

  /** In which takes a place is off in one way. */
  public enum Habitual {
    /** In all of them taken together. */
    ALL,
    /** In the earlier half; not in all together. */
    EARLIER,
    /** In the later half; not in all together. */
    LATER,
    /** In none beyond chance. */
    NEVER
  }

  /**
   * Looks at all places of a piece.
   *
   * <p>A place is a habit if the mean of three takes or more is farther than two standard errors
   * from zero, farther than {@link ScorePlace.Kind#least()}, and less likely by chance than {@value
   * #FALSE_IN_HUNDRED} in a hundred, shared by all places and parts that are looked at (C. E.
   * Bonferroni's inequality of 1936, with {@link StudentT}): who looks at many places will find one
   * that is off by chance. From twice three takes on both halves are looked at too, so that a habit
   * that has gone, or is new, is found.
   *
   * @param history the log
   * @param piece its name
   * @return every place, in the order of {@link PlaceHistory#of}
   */
  public static List<PlaceFinding> of(History history, String piece) {
    List<PlaceHistory> places = PlaceHistory.of(history, piece);
    int looks = places.stream().mapToInt(PlaceFinding::looks).sum();
    double chance = FALSE_IN_HUNDRED / 100.0 / Math.max(1, looks);
    return places.stream().map(place -> of(place, chance)).toList();
  }

  private static PlaceFinding of(PlaceHistory place, double chance) {
    Habitual habit = habitual(place, chance);
    return new PlaceFinding(
        place, habit, habit == Habitual.NEVER ? Optional.empty() : PlaceTrend.of(place));
  }

  private static Habitual habitual(PlaceHistory place, double chance) {
    int count = place.points().size();
    if (isHabit(place, chance)) {
      return Habitual.ALL;
    } else if (looks(place) == 1) {
      return Habitual.NEVER;
    } else if (isHabit(place.part(count / 2, count), chance)) {
      return Habitual.LATER;
    }
    return isHabit(place.part(0, count / 2), chance) ? Habitual.EARLIER : Habitual.NEVER;
  }

  private static int looks(PlaceHistory place) {
    int count = place.points().size();
    return count < LEAST_TAKES ? 0 : count < 2 * LEAST_TAKES ? 1 : 3;
  }

  private static boolean isHabit(PlaceHistory place, double chance) {
    int count = place.points().size();
    if (count < LEAST_TAKES) {
      return false;
    }
    double mean = Math.abs(place.mean());
    double errors = mean * Math.sqrt(count) / Math.hypot(place.spread(), ROUNDING);
    return mean >= place.place().kind().least()
        && errors > LEAST_ERRORS
        && StudentT.chance(errors, count - 1) <= chance;
  }

  /**
   * Whether there is or was a habit.
   *
   * @return true if it is told of
   */
  public boolean isTold() {
    return habit != Habitual.NEVER;
  }

  /**
   * Whether there were takes enough for a trend.
   *
   * @return true from {@value RankTrend#LEAST} takes on
   */
  public boolean trendWasSought() {
    return isTold() && history.points().size() >= RankTrend.LEAST;
  }

  /**
   * The takes that bear the habit out; all of them if there is none.
   *
   * @return the place in those takes
   */
  public PlaceHistory part() {
    int count = history.points().size();
    return switch (habit) {
      case ALL, NEVER -> history;
      case EARLIER -> history.part(0, count / 2);
      case LATER -> history.part(count / 2, count);
    };
  }

  /**
   * The other half.
   *
   * @return the place in the takes that do not; empty if the habit is of all takes, or there is
   *     none
   */
  public Optional<PlaceHistory> rest() {
    int count = history.points().size();
    return switch (habit) {
      case ALL, NEVER -> Optional.empty();
      case EARLIER -> Optional.of(history.part(count / 2, count));
      case LATER -> Optional.of(history.part(0, count / 2));
    };
  }
}
