package org.matraloom.pasted;

import java.util.Collections;
import java.util.OptionalInt;

/**
 * A line of sollus as it goes into the score.
 *
 * @param number which line of the text it was, from 1
 * @param label what stood before it as its name; empty if nothing did
 * @param body the sollus in the signs of a score
 * @param times how often it is said, at least 1
 * @param gap matras of karvai between the times, none after the last
 * @param total how many matras the text says it has
 */
record PastedLine(int number, String label, String body, int times, int gap, OptionalInt total) {

  PastedLine withBody(String other) {
    return new PastedLine(number, label, other, times, gap, total);
  }

  /** How it is said under a name. */
  String said(String name) {
    if (gap == 0) {
      return times == 1 ? name : name + " x" + times;
    }
    String karvai = " ;".repeat(gap / 2) + " ,".repeat(gap % 2);
    return String.join(karvai + " ", Collections.nCopies(times, name));
  }
}
