package org.matraloom.log;

import java.util.List;
import java.util.Optional;

/**
 * When to go up a rung of tempo, and when down: common practice, with numbers of our own.
 *
 * <p>Down: the newest takes were misses, at whatever tempi, and enough of them. The step is taken
 * from the newest.
 *
 * <p>Up: the newest takes were clean, enough of them, and none of these was slower than the newest
 * by more than half a step up. The step is taken from the slowest of them, so that all were clean
 * at the tempo it is taken from, or above.
 *
 * <p>Otherwise the tempo of the newest take once more.
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
   * @param inARow how many takes in a row count with the newest one, itself among them
   * @param needed how many are needed for a step
   * @param then to where that step leads, or one more take like this would, in beats a minute
   * @param from the tempo of the newest take, in beats a minute; with a step up, of the slowest
   *     take that counts
   * @param clean how the newest take went
   */
  public record Advice(
      long tempo, Move move, int inARow, int needed, long then, double from, boolean clean) {}

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
    return Optional.of(newest.clean() ? afterClean(points, newest) : afterMiss(points, newest));
  }

  private Advice afterClean(List<CleanTempo.Point> points, CleanTempo.Point newest) {
    int inARow = 0;
    double slowest = newest.tempo();
    for (int i = points.size() - 1; i >= 0 && isCleanEnough(points.get(i), newest); i--) {
      if (inARow < cleanInARow) {
        slowest = Math.min(slowest, points.get(i).tempo());
      }
      inARow++;
    }
    long up = Math.round(slowest + upBpm);
    boolean isUp = inARow >= cleanInARow;
    return new Advice(
        isUp ? up : Math.round(newest.tempo()),
        isUp ? Move.UP : Move.STAY,
        inARow,
        cleanInARow,
        up,
        isUp ? slowest : newest.tempo(),
        true);
  }

  private boolean isCleanEnough(CleanTempo.Point take, CleanTempo.Point newest) {
    return take.clean() && take.tempo() >= newest.tempo() - upBpm / 2;
  }

  private Advice afterMiss(List<CleanTempo.Point> points, CleanTempo.Point newest) {
    int inARow = 0;
    for (int i = points.size() - 1; i >= 0 && !points.get(i).clean(); i--) {
      inARow++;
    }
    long same = Math.round(newest.tempo());
    long down = Math.max(Math.min(SLOWEST, same), Math.round(newest.tempo() - downBpm));
    boolean isDown = inARow >= missesInARow;
    return new Advice(
        isDown ? down : same,
        isDown ? Move.DOWN : Move.STAY,
        inARow,
        missesInARow,
        down,
        newest.tempo(),
        false);
  }
}
