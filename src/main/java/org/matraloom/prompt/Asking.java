package org.matraloom.prompt;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a reciter is asked for next: each row until it was said well often enough, a bad one again
 * at once, but no more than a few times running, so that nobody is held at one row.
 */
public final class Asking {

  /** How often each row is to be said well. */
  public static final int TAKES = 3;

  /** How often running a row is asked for. */
  static final int MOST_TRIES = 3;

  /** After so many rows the voice rests. */
  static final int ROWS_TO_REST = 8;

  /**
   * What is asked for.
   *
   * @param row which row, from 0
   * @param says how often it is to be said, 1 to {@link #TAKES}
   * @param isAgain whether it was asked for just before
   * @param isAfterRest whether the voice is to rest first
   */
  public record Ask(int row, int says, boolean isAgain, boolean isAfterRest) {}

  private final int[] good;
  private final Deque<Integer> coming = new ArrayDeque<>();
  private int tries;
  private int rowsSinceRest;

  /**
   * Begins, or goes on.
   *
   * @param good for each row how often it has been said well before
   */
  public Asking(int[] good) {
    this.good = good.clone();
    IntStream.range(0, good.length).filter(row -> isWanted(row)).forEach(coming::add);
  }

  private boolean isWanted(int row) {
    return good[row] < TAKES;
  }

  /**
   * What to ask for now.
   *
   * @return empty if there is nothing left
   */
  public Optional<Ask> next() {
    if (coming.isEmpty()) {
      return Optional.empty();
    }
    int row = coming.peek();
    return Optional.of(
        new Ask(row, TAKES - good[row], tries > 0, tries == 0 && rowsSinceRest >= ROWS_TO_REST));
  }

  /**
   * Tells what came of the row that was asked for.
   *
   * @param said how often it was said well
   */
  public void heard(int said) {
    if (coming.isEmpty()) {
      throw new IllegalStateException("no row was asked for");
    }
    int row = coming.peek();
    good[row] += said;
    tries++;
    if (!isWanted(row) || tries >= MOST_TRIES) {
      leave();
    }
  }

  /** Tells that the voice has rested. */
  public void rested() {
    rowsSinceRest = 0;
  }

  /**
   * Goes on without a row.
   *
   * @param row the one that was asked for; nothing is done if it was left already
   */
  public void skip(int row) {
    if (!coming.isEmpty() && coming.peek() == row) {
      leave();
    }
  }

  /**
   * Counts the try at a row as none, as it was broken off.
   *
   * @param row the one that was asked for
   */
  public void pause(int row) {
    again(row, 0);
  }

  private void leave() {
    coming.remove();
    tries = 0;
    rowsSinceRest++;
  }

  /**
   * Asks for a row once more, from anew.
   *
   * @param row a row that was asked for
   * @param lost how many of its good sayings are given up
   */
  public void again(int row, int lost) {
    good[row] -= lost;
    tries = 0;
    if (isWanted(row) && (coming.isEmpty() || coming.peek() != row)) {
      coming.addFirst(row);
    }
  }

  /**
   * How many rows are still asked for.
   *
   * @return 0 or more
   */
  public int left() {
    return coming.size();
  }

  /**
   * How often the rows that are still asked for are to be said.
   *
   * @return 0 or more
   */
  public int wanted() {
    return coming.stream().mapToInt(row -> TAKES - good[row]).sum();
  }

  /**
   * The rows that were not said well once.
   *
   * @return their numbers from 0; those that are still to come among them
   */
  public List<Integer> missing() {
    return IntStream.range(0, good.length).filter(row -> good[row] == 0).boxed().toList();
  }

  /**
   * How many sayings there are.
   *
   * @return those that were said well
   */
  public int kept() {
    return Arrays.stream(good).sum();
  }
}
