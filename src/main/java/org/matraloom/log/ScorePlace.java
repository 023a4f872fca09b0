package org.matraloom.log;

import java.util.Comparator;

/**
 * A place of a piece that can be looked at over many takes.
 *
 * @param kind what is measured there
 * @param round which round, from 1; 0 where it is the piece as a whole
 * @param name the phrase, or the matras a beat before and after a change, such as 4>5; may be empty
 */
public record ScorePlace(Kind kind, int round, String name) implements Comparable<ScorePlace> {

  /** The longest name kept, in letters. */
  public static final int LONGEST_NAME = 500;

  private static final Comparator<ScorePlace> ORDER =
      Comparator.comparing(ScorePlace::kind)
          .thenComparing(ScorePlace::round)
          .thenComparing(ScorePlace::name);

  /** What is measured, in the order in which it is shown. */
  public enum Kind {
    /** How late the last sollu is, in ms. */
    LANDING("ms", 10),
    /** How late the first beat after a change of nadai is said, in ms. */
    INTO("ms", 10),
    /** How much faster than asked the matras go after a change of nadai, in percent. */
    SPEED("%", 2.5),
    /** How late the sollus of a phrase are as a rule, in ms. */
    PHRASE("ms", 10),
    /** How much faster a round is than the take as a whole, in percent. */
    ROUND("%", 2.5);

    private final String unit;
    private final double least;

    Kind(String unit, double least) {
      this.unit = unit;
      this.least = least;
    }

    /**
     * In what it is counted.
     *
     * @return ms or %
     */
    public String unit() {
      return unit;
    }

    /**
     * A mean below this is never told: 10 ms may come from the measurement, which knows the usual
     * lag of a consonant and not each performer's; 2.5 % is the least that is noticed (A. Friberg
     * and J. Sundberg, J. Acoust. Soc. Am. 98 (1995) 2524-2531).
     *
     * @return in its unit, above 0
     */
    public double least() {
      return least;
    }
  }

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if the round or the length of the name is out of range
   */
  public ScorePlace {
    if (round < 0 || round > 1_000_000) {
      throw new IllegalArgumentException("round is out of range: " + round);
    }
    if (name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException("name is out of range: " + name);
    }
  }

  @Override
  public int compareTo(ScorePlace other) {
    return ORDER.compare(this, other);
  }
}
