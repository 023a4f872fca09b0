package org.matraloom.madetake;

/** How five in a beat goes wrong; where in the beat the sollus then fall. */
public enum KhandaFault {
  /** The matra before the change is kept for the whole round, which lasts 5/4 of its time. */
  OLD_SPEED_THROUGHOUT(0, 0.2, 0.4, 0.6, 0.8),
  /** The old matra in each beat anew; the fifth spills into the next beat. */
  OLD_SPEED_IN_EACH_BEAT(0, 0.25, 0.5, 0.75, 1),
  /** Two eighths and a triplet. */
  LIMPING(0, 0.25, 0.5, 0.667, 0.833),
  /** Too fast, then waiting for the beat. */
  RUSHED(0, 0.17, 0.33, 0.5, 0.67);

  /** The old matra is so much longer than the new one. */
  static final double OLD_TO_NEW = 1.25;

  /** The tongue needs so long before the next beat. */
  private static final double LEAST_SECONDS = 0.070;

  private final double[] places;

  KhandaFault(double... places) {
    this.places = places;
  }

  /**
   * Where something falls.
   *
   * @param part where it should fall, 0 to 1 of the beat
   * @param beatSeconds how long the beat is
   */
  double place(double part, double beatSeconds) {
    int matra = Math.min(4, (int) (5 * part + 1e-9));
    double end = matra == 4 ? 1 : places[matra + 1];
    double inside = 5 * part - matra;
    double place = places[matra] + inside * (Math.max(end, places[matra]) - places[matra]);
    return Math.min(place, 1 - LEAST_SECONDS / beatSeconds);
  }
}
