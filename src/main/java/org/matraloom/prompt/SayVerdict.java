package org.matraloom.prompt;

import java.util.List;
import java.util.Optional;

/**
 * What is to be said of one saying of a row.
 *
 * @param fault why it is to be said again, a part of a sentence; empty if it was good
 * @param seconds of a good one, where each sollu begins in the recording, in order; else empty
 */
public record SayVerdict(Optional<String> fault, List<Double> seconds) {

  /** Copies the list. */
  public SayVerdict {
    seconds = List.copyOf(seconds);
  }

  static SayVerdict good(List<Double> seconds) {
    return new SayVerdict(Optional.empty(), seconds);
  }

  static SayVerdict bad(String fault) {
    return new SayVerdict(Optional.of(fault), List.of());
  }

  /**
   * Whether it can be used.
   *
   * @return true if nothing is known against it
   */
  public boolean isGood() {
    return fault.isEmpty();
  }
}
