package org.matraloom.measure;

import java.util.OptionalInt;

/**
 * A change of nadai as it was said.
 *
 * @param place the first sollu in the new nadai, its place among {@code Alignment.expected()}
 * @param round the round it belongs to, from 1
 * @param from matras a beat before
 * @param to matras a beat after
 * @param ratio how many times as fast the matras went after it; 1.25 is asked where four become
 *     five
 * @param beatsUntilSteady after how many beats the new speed is kept within tolerance; empty if it
 *     never is
 */
public record SaidNadaiChange(
    int place, int round, int from, int to, double ratio, OptionalInt beatsUntilSteady) {

  /**
   * The ratio the score asks for.
   *
   * @return matras a beat after the change by those before
   */
  public double asked() {
    return (double) to / from;
  }
}
