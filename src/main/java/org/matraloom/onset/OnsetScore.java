package org.matraloom.onset;

/**
 * How well found onsets agree with true ones.
 *
 * @param hits found onsets that match a true one
 * @param extra found onsets that match none
 * @param missed true onsets that were not found
 */
public record OnsetScore(int hits, int extra, int missed) {

  /** What a share of nothing is: the two conventions in use differ. */
  public enum Convention {
    /** A share of nothing is 0, as in mir_eval (Raffel et al., ISMIR 2014). */
    NOUGHT,
    /** A share of nothing is 1: no detection cannot be wrong; as in madmom (Böck et al., 2016). */
    WHOLE
  }

  /**
   * The share of found onsets that are true.
   *
   * @param convention what to answer when nothing was found
   * @return 0 to 1
   */
  public double precision(Convention convention) {
    return share(hits, hits + extra, convention);
  }

  /**
   * The share of true onsets that were found.
   *
   * @param convention what to answer when there was nothing to find
   * @return 0 to 1
   */
  public double recall(Convention convention) {
    return share(hits, hits + missed, convention);
  }

  /**
   * The harmonic mean of precision and recall.
   *
   * @param convention what a share of nothing is
   * @return 0 to 1; 0 where precision and recall are both 0
   */
  public double fMeasure(Convention convention) {
    double precision = precision(convention);
    double recall = recall(convention);
    return precision + recall == 0 ? 0 : 2 * precision * recall / (precision + recall);
  }

  private static double share(int part, int whole, Convention convention) {
    if (whole == 0) {
      return convention == Convention.WHOLE ? 1 : 0;
    }
    return (double) part / whole;
  }
}
