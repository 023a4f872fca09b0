package org.matraloom.log;

import java.util.List;
import java.util.Optional;

/**
 * When to go up a rung of tempo, and when down: common practice, with numbers of our own.
 *
 * <p>Looked at are the newest take and those right before it that were said at its tempo, give or
 * take half a step up, and that went as it did. Enough clean ones in a row: up. Enough misses in a
 * row: down. Otherwise the same tempo once more.
 *
 * @param cleanInARow clean takes before going up, 1 to 100
 * @param upBpm how far up, in beats a minute, more than 0, at most 100
 * @param missesInARow misses before going down, 1 to 100
 * @param downBpm how far down, in beats a minute, more than 0, at most 100
 */
public record TempoRule(int cleanInARow, double upBpm, int missesInARow, double downBpm) {

  /** Two clean takes up by 5, two misses down by 10. */
  public static final TempoRule USUAL = new TempoRule(2, 5, 2, 10);

  /**
   * No tempo under this is suggested, in beats a minute: a beat of more than 1.8 s is no longer
   * felt as one (Repp 2006, Advances in Cognitive Psychology 2:163).
   */
  public static final int SLOWEST = 34;

  private static final int MOST = 100;

  /** Where to go from here. */
  public enum Move {
    /** Faster. */
    UP,
    /** Slower. */
    DOWN,
    /** The same again. */
    STAY
  }

  /**
   * What to practise at next.
   *
   * @param tempo beats a minute, whole
   * @param move where that is
   * @param inARow how many takes in a row went like the newest one
   * @param from the tempo of the newest take, in beats a minute
   * @param clean how it went
   */
  public record Advice(long tempo, Move move, int inARow, double from, boolean clean) {}

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if a value is outside its range
   */
  public TempoRule {
    if (cleanInARow < 1 || cleanInARow > MOST || missesInARow < 1 || missesInARow > MOST) {
      throw new IllegalArgumentException("takes in a row are 1 to " + MOST);
    }
    if (!(upBpm > 0 && upBpm <= MOST && downBpm > 0 && downBpm <= MOST)) {
      throw new IllegalArgumentException("a step is more than 0 and at most " + MOST + " bpm");
    }
  }

  /**
   * Suggests the next tempo.
   *
   * @param points takes, oldest first
   * @return empty if there is no take
   */
  public Optional<Advice> next(List<CleanTempo.Point> points) {
    if (points.isEmpty()) {
      return Optional.empty();
    }
    CleanTempo.Point newest = points.get(points.size() - 1);
    int inARow = 0;
    for (int i = points.size() - 1; i >= 0 && isLike(points.get(i), newest); i--) {
      inARow++;
    }
    boolean isUp = newest.clean() && inARow >= cleanInARow;
    boolean isDown = !newest.clean() && inARow >= missesInARow;
    double tempo = newest.tempo() + (isUp ? upBpm : isDown ? -downBpm : 0);
    long whole = Math.max(Math.min(SLOWEST, Math.round(newest.tempo())), Math.round(tempo));
    Move move = isUp ? Move.UP : isDown ? Move.DOWN : Move.STAY;
    return Optional.of(new Advice(whole, move, inARow, newest.tempo(), newest.clean()));
  }

  private boolean isLike(CleanTempo.Point take, CleanTempo.Point newest) {
    return take.clean() == newest.clean() && Math.abs(take.tempo() - newest.tempo()) <= upBpm / 2;
  }
}
