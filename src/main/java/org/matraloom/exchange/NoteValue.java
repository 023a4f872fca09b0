package org.matraloom.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.matraloom.time.Ratio;

/**
 * How a length of part of a beat is written in staff notation, a beat being a quarter.
 *
 * @param beats how long it sounds
 * @param type the name of its note head and flags in MusicXML, such as "16th"
 * @param dots how many dots it has, 0 to 2
 * @param actual how many of its kind stand in the time of {@code normal}
 * @param normal see {@code actual}; equal to it outside a tuplet
 */
record NoteValue(Ratio beats, String type, int dots, int actual, int normal) {

  private static final int MOST_DOTS = 2;
  private static final int MOST_PIECES = 12;
  private static final List<String> TYPES =
      List.of("quarter", "eighth", "16th", "32nd", "64th", "128th", "256th", "512th", "1024th");

  boolean inTuplet() {
    return actual != normal;
  }

  /**
   * Writes a length of at most a beat, tied together from several values where one does not do.
   *
   * @param beats the length
   * @param matrasPerBeat how many matras the beat holds
   * @return the values, longest first; none if no values give the length exactly
   */
  static List<NoteValue> of(Ratio beats, int matrasPerBeat) {
    if (beats.equals(Ratio.ONE)) {
      return List.of(new NoteValue(beats, TYPES.get(0), 0, 1, 1));
    }
    int odd = oddPart(matrasPerBeat);
    List<NoteValue> values = tied(beats, odd);
    return values.isEmpty() ? tied(beats, oddPart(beats.den())) : values;
  }

  private static List<NoteValue> tied(Ratio beats, int actual) {
    int normal = Integer.highestOneBit(actual);
    List<NoteValue> values = new ArrayList<>();
    Ratio left = beats.times(Ratio.of(actual, normal));
    while (left.signum() > 0 && values.size() < MOST_PIECES) {
      Optional<NoteValue> longest = longest(left, actual, normal);
      if (longest.isEmpty()) {
        return List.of();
      }
      values.add(longest.get());
      left = left.minus(longest.get().beats.times(Ratio.of(actual, normal)));
    }
    return left.signum() == 0 ? values : List.of();
  }

  /** The longest value, as it is drawn, that is not longer than what is left. */
  private static Optional<NoteValue> longest(Ratio left, int actual, int normal) {
    for (int power = 0; power < TYPES.size(); power++) {
      for (int dots = MOST_DOTS; dots >= 0; dots--) {
        Ratio drawn = Ratio.of((1L << dots + 1) - 1, 1L << power + dots);
        if (drawn.compareTo(left) <= 0 && isDyadic(left)) {
          Ratio sounds = drawn.times(Ratio.of(normal, actual));
          return Optional.of(new NoteValue(sounds, TYPES.get(power), dots, actual, normal));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isDyadic(Ratio length) {
    return Long.bitCount(length.den()) == 1;
  }

  private static int oddPart(long number) {
    return (int) (number >> Long.numberOfTrailingZeros(number));
  }
}
