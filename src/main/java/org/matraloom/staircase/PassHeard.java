package org.matraloom.staircase;

import java.util.Optional;

/**
 * How a pass went.
 *
 * @param clean whether nothing was found wrong
 * @param fault where it went wrong; empty if it is clean, or wrong at no one place
 */
public record PassHeard(boolean clean, Optional<Spot> fault) {

  /** Nothing was found wrong. */
  public static final PassHeard CLEAN = new PassHeard(true, Optional.empty());

  /**
   * Something went wrong.
   *
   * @param fault where; empty if at no one place
   * @return a missed pass
   */
  public static PassHeard missed(Optional<Spot> fault) {
    return new PassHeard(false, fault);
  }
}
