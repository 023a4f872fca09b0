package org.matraloom.schedule;

import java.util.SplittableRandom;

/**
 * In which avartanas the hand and the ticks are heard, so that the pulse has to be kept inside.
 *
 * <p>Some cycles with a click and some without is common practice; five heard and three silent in a
 * loop of eight is one published form.
 */
@FunctionalInterface
public interface ClickPattern {

  /** The most avartanas in a row that a fixed pattern keeps one way. */
  int MOST_IN_A_ROW = 64;

  /** What is heard in one avartana. */
  enum Heard {
    /** Every kriya and every tick. */
    ALL,
    /** The clap on samam only. */
    SAMAM,
    /** Nothing of the hand. */
    NOTHING
  }

  /**
   * What is heard in an avartana.
   *
   * @param avartana which, from 0: the one in which the performance starts
   * @return what is heard
   */
  Heard in(long avartana);

  /**
   * Some avartanas heard, some less or not at all, over and over.
   *
   * @param heard how many in a row are heard, 1 to {@value #MOST_IN_A_ROW}
   * @param silent how many in a row are not, 1 to {@value #MOST_IN_A_ROW}
   * @param meanwhile what is heard in those: {@link Heard#NOTHING} or {@link Heard#SAMAM}
   * @return the pattern
   * @throws IllegalArgumentException if a number is out of range
   */
  static ClickPattern fixed(int heard, int silent, Heard meanwhile) {
    requireInARow("heard", heard);
    requireInARow("silent", silent);
    return avartana ->
        Math.floorMod(avartana, (long) heard + silent) < heard ? Heard.ALL : meanwhile;
  }

  /**
   * Avartanas that fall silent at random; the first is always heard.
   *
   * @param percent how many of a hundred are silent on average, 1 to 90
   * @param seed the same seed gives the same avartanas
   * @param meanwhile what is heard in those
   * @return the pattern
   * @throws IllegalArgumentException if the percentage is out of range
   */
  static ClickPattern random(int percent, long seed, Heard meanwhile) {
    if (percent < 1 || percent > 90) {
      throw new IllegalArgumentException(
          "1 to 90 of a hundred avartanas can be silent, given " + percent);
    }
    return avartana ->
        avartana > 0 && new SplittableRandom(seed * 31 + avartana).nextInt(100) < percent
            ? meanwhile
            : Heard.ALL;
  }

  private static void requireInARow(String what, int given) {
    if (given < 1 || given > MOST_IN_A_ROW) {
      throw new IllegalArgumentException(
          "1 to " + MOST_IN_A_ROW + " avartanas in a row can be " + what + ", given " + given);
    }
  }
}
