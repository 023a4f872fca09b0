package org.matraloom.measure;

import java.util.List;

/**
 * Where there was room to breathe, and where it was taken.
 *
 * @param longestSeconds the longest time said on one breath
 * @param longestFromPlace the sollu it begins with, a place among {@code Alignment.expected()}
 * @param planned how many breaths the plan has
 * @param kept how many of them were taken
 * @param taken all breaths that were taken, in order of time
 */
public record BreathFindings(
    double longestSeconds, int longestFromPlace, int planned, int kept, List<Pause> taken) {

  /**
   * A pause long enough to breathe in.
   *
   * @param afterPlace the sollu before it, a place among {@code Alignment.expected()}
   * @param atSeconds where it begins, from the beginning of the recording
   * @param seconds how long it is
   * @param planned whether the plan has a breath there
   */
  public record Pause(int afterPlace, double atSeconds, double seconds, boolean planned) {}

  /** Copies the list. */
  public BreathFindings {
    taken = List.copyOf(taken);
  }
}
