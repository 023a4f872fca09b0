package org.matraloom.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.matraloom.time.Ratio;

/**
 * The shape of a list of lines by their lengths.
 *
 * <p>The six names: mridangams.com, chapter 5; Balaji, "Yatis as Purvanga of Korvai". The name of
 * the hourglass form differs by source. A line repeated at once counts as one line of the shape, so
 * that 8 8 6 6 4 4 shrinks. Two lengths cannot be classed (derived), so 8 8 4 has no shape. Whether
 * the lines grow or shrink by equal steps, which Reina (Applying Karnatic Rhythmical Techniques,
 * Routledge 2016, chapter 12) asks for, is told apart from the name: see {@link YatiSteps}.
 */
public enum Yati {
  /** All lines equal. */
  SAMA("equal lines"),
  /** Each line shorter than the one before: the cow's tail. */
  GOPUCCHA("long to short"),
  /** Each line longer than the one before: the river. */
  SROTOVAHA("short to long"),
  /** Longest in the middle: the drum. */
  MRIDANGA("short, long, short"),
  /** Shortest in the middle: the hourglass, also called veda-madhyama. */
  DAMARU("long, short, long"),
  /** Irregular: three lengths or more in none of the other orders. */
  VISHAMA("irregular"),
  /** No shape: fewer than three lines, or only two lengths side by side. */
  NONE("too few different lines");

  /** The fewest lines that make a shape. */
  public static final int FEWEST_LINES = 3;

  private final String meaning;

  Yati(String meaning) {
    this.meaning = meaning;
  }

  /**
   * The name in plain romanisation.
   *
   * @return for example "gopuccha"
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * What the name says.
   *
   * @return for example "long to short"
   */
  public String meaning() {
    return meaning;
  }

  /**
   * Names the shape of lines.
   *
   * @param lines the lengths in order, in any one unit
   * @return the yati
   */
  public static Yati of(List<Ratio> lines) {
    if (lines.size() < FEWEST_LINES) {
      return NONE;
    }
    List<Integer> directions = directions(lines);
    int turn = turningPoint(directions);
    if (directions.isEmpty()) {
      return SAMA;
    } else if (turn < 0) {
      return VISHAMA;
    } else if (turn < directions.size()) {
      return directions.get(0) > 0 ? MRIDANGA : DAMARU;
    } else if (directions.size() < FEWEST_LINES - 1) {
      return NONE;
    }
    return directions.get(0) > 0 ? SROTOVAHA : GOPUCCHA;
  }

  /**
   * Names the shape of lines of whole matras.
   *
   * @param matras the lengths in order
   * @return the yati
   */
  public static Yati ofMatras(List<Integer> matras) {
    return of(matras.stream().map(Ratio::of).toList());
  }

  private static List<Integer> directions(List<Ratio> lines) {
    List<Integer> directions = new ArrayList<>();
    for (int i = 1; i < lines.size(); i++) {
      int direction = lines.get(i).compareTo(lines.get(i - 1));
      if (direction != 0) {
        directions.add(direction);
      }
    }
    return directions;
  }

  /** How many steps go one way before they all go the other; -1 if they turn more than once. */
  private static int turningPoint(List<Integer> directions) {
    int turn = 0;
    while (turn < directions.size() && directions.get(turn).equals(directions.get(0))) {
      turn++;
    }
    for (int i = turn; i < directions.size(); i++) {
      if (directions.get(i).equals(directions.get(0))) {
        return -1;
      }
    }
    return turn;
  }
}
