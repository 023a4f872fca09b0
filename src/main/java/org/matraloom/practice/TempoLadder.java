package org.matraloom.practice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.matraloom.score.Composition;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.time.Ratio;
import org.matraloom.time.Tempo;

/**
 * The tempi of a practice ladder.
 *
 * <p>A ladder from 70 by 10 to its double, 140, has eight rungs (practice page of a performer,
 * tongue exercise, 2017).
 *
 * @param rungs the tempi in the order in which they are taken, at least one
 */
public record TempoLadder(List<Tempo> rungs) {

  private static final int MOST_RUNGS = 200;

  /** Which way a ladder goes. */
  public enum Way {
    /** From the slowest rung to the fastest. */
    UP,
    /** From the fastest rung to the slowest: the fast line sets the pace. */
    DOWN,
    /** Up, then down again; the top is taken once. */
    BOTH
  }

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if there are no rungs, or more than 200
   */
  public TempoLadder {
    rungs = List.copyOf(rungs);
    if (rungs.isEmpty() || rungs.size() > MOST_RUNGS) {
      throw new IllegalArgumentException(
          "a ladder has 1 to " + MOST_RUNGS + " rungs, given " + rungs.size());
    }
  }

  /**
   * A ladder of equal steps; the top is its last rung where the steps reach it, else the rung
   * below.
   *
   * @param from the slowest tempo, in beats a minute
   * @param step how much each rung adds, above 0
   * @param top the fastest tempo
   * @param repeats how often each rung is taken, 1 to 20
   * @param way which way it goes
   * @return the ladder
   * @throws IllegalArgumentException if a number is out of range or the top is below the start
   */
  public static TempoLadder of(Ratio from, Ratio step, Ratio top, int repeats, Way way) {
    if (step.signum() <= 0 || top.compareTo(from) < 0) {
      throw new IllegalArgumentException(
          "a ladder goes from the slower tempo to the faster by a step above 0, given "
              + from.toMixed()
              + " to "
              + top.toMixed()
              + " by "
              + step.toMixed());
    }
    Drill.requireRange("the number of repeats", repeats, 1, 20);
    long last = top.minus(from).dividedBy(step).floor();
    if (last >= MOST_RUNGS) {
      throw new IllegalArgumentException(
          "a ladder has at most " + MOST_RUNGS + " rungs, given " + (last + 1));
    }
    List<Tempo> up = new ArrayList<>();
    for (long rung = 0; rung <= last; rung++) {
      up.add(new Tempo(from.plus(step.times(rung))));
    }
    List<Tempo> down = new ArrayList<>(up);
    Collections.reverse(down);
    List<Tempo> order = new ArrayList<>(way == Way.DOWN ? down : up);
    if (way == Way.BOTH) {
      order.addAll(down.subList(1, down.size()));
    }
    List<Tempo> rungs = new ArrayList<>();
    order.forEach(rung -> rungs.addAll(Collections.nCopies(repeats, rung)));
    return new TempoLadder(rungs);
  }

  /**
   * The whole tempo at which the densest round of a score asks for no more than a rate: fix the
   * fastest line that is still clear, and derive the rest from it.
   *
   * @param composition the score
   * @param matrasPerSecond the rate that is still clear, 1 to 20
   * @return the tempo, rounded down to a whole beat a minute
   * @throws IllegalArgumentException if the rate is out of range
   */
  public static Tempo fastestAt(Composition composition, double matrasPerSecond) {
    if (!(matrasPerSecond >= 1 && matrasPerSecond <= 20)) {
      throw new IllegalArgumentException(
          "a clear rate is 1 to 20 matras a second, given " + matrasPerSecond);
    }
    int densest =
        Performance.of(composition).rounds().stream()
            .mapToInt(Span.Round::matrasPerBeat)
            .max()
            .orElse(1);
    return Tempo.noQuickerThan(matrasPerSecond, densest);
  }
}
