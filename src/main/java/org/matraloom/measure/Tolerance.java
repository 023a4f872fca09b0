package org.matraloom.measure;

/**
 * How far a sound may be displaced before a listener notices.
 *
 * <p>A. Friberg and J. Sundberg, "Time discrimination in a monotonic, isochronous sequence", J.
 * Acoust. Soc. Am. 98 (1995) 2524-2531: the displacement of one tone in an even row is noticed from
 * 6 ms where the tones are less than about 240 ms apart, and from 2.5 % of their distance above.
 */
public final class Tolerance {

  private static final double LEAST_SECONDS = 0.006;
  private static final double SHARE = 0.025;

  /**
   * From here on two sounds that ought to be one are heard as two. The order of two onsets is told
   * almost always at 60 ms (experiments page of the Mazurka Project, mazurka.org.uk).
   */
  static final double APART_SECONDS = 0.060;

  /**
   * From here on a drift of the tempo is heard, in percent from the first beat to the last: five
   * taps at 60 beats a minute are just told from five at 62 (the same page).
   */
  public static final double DRIFT_PERCENT = 100 * 2.0 / 60;

  private Tolerance() {}

  /**
   * The least displacement that is noticed.
   *
   * @param intervalSeconds the distance of the sounds, above 0
   * @return seconds
   */
  public static double displacementSeconds(double intervalSeconds) {
    return Math.max(LEAST_SECONDS, SHARE * intervalSeconds);
  }

  /**
   * How far the last sollu may be from its place and the piece still lands: less than is heard as
   * two, and less than half a matra.
   *
   * @param matraSeconds the length of a matra, above 0
   * @return seconds
   */
  public static double landingSeconds(double matraSeconds) {
    return Math.min(APART_SECONDS, matraSeconds / 2);
  }
}
