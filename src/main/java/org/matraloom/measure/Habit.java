package org.matraloom.measure;

/** A wrong way to say a nadai that many fall into. */
public enum Habit {
  /** The speed before the change goes on: five matras, each as long as a quarter of a beat. */
  OLD_SPEED_KEPT("the matras kept the speed of the nadai before"),
  /** Five said as two and three: two quarters of a beat, then three sixths. */
  LIMPING("the five limped, two slow matras and three quick ones"),
  /** Each beat is hurried through and then waited for: each matra a sixth of the beat. */
  RUSHED_THEN_WAITING("each beat was rushed and then waited for");

  private final String words;

  Habit(String words) {
    this.words = words;
  }

  /**
   * What was done.
   *
   * @return a clause without a full stop
   */
  public String words() {
    return words;
  }
}
