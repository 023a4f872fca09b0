package org.matraloom.mouth;

import java.util.List;
import java.util.OptionalInt;

/**
 * Where things are in a sample, in frames of {@link Kit#RATE} from the beginning of its file.
 *
 * @param release where the consonant lets go, or its murmur begins
 * @param vowel where the vowel begins
 * @param beat what falls on the grid, the vowel onset unless the owner moved it
 * @param steadyBegin from where the vowel is steady enough to be drawn out
 * @param steadyEnd to where it is
 * @param nasal where the closing nasal begins; empty for an open sollu
 * @param end where the sollu is over
 * @param pitchMarks one moment in each period of the folds, in order
 */
public record SamplePlaces(
    int release,
    int vowel,
    int beat,
    int steadyBegin,
    int steadyEnd,
    OptionalInt nasal,
    int end,
    List<Integer> pitchMarks) {

  /** The fewest pitch marks a vowel can be drawn out by. */
  static final int FEWEST_MARKS = 4;

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException if a place lies before one that must come first
   */
  public SamplePlaces {
    pitchMarks = List.copyOf(pitchMarks);
    require(release >= 0, "the release lies before the file");
    require(release <= vowel, "the vowel begins before the release");
    require(beat >= release && beat < end, "the beat is not between release and end");
    require(vowel <= steadyBegin, "the steady part begins before the vowel");
    require(steadyBegin < steadyEnd, "the steady part ends before it begins");
    require(
        nasal.isEmpty() || nasal.getAsInt() >= steadyEnd, "the nasal begins in the steady part");
    require(nasal.orElse(steadyEnd) <= end, "the end lies before what it ends");
    for (int i = 1; i < pitchMarks.size(); i++) {
      require(pitchMarks.get(i - 1) < pitchMarks.get(i), "the pitch marks are not in order");
    }
    require(pitchMarks.size() >= FEWEST_MARKS, "there are fewer than 4 pitch marks");
    require(pitchMarks.get(0) >= 0, "a pitch mark lies before the file");
  }

  private static void require(boolean holds, String fault) {
    if (!holds) {
      throw new IllegalArgumentException(fault);
    }
  }

  /** The same places in a sound of another rate. */
  SamplePlaces at(int ratePerSecond) {
    if (ratePerSecond == Kit.RATE) {
      return this;
    }
    double ratio = (double) ratePerSecond / Kit.RATE;
    return new SamplePlaces(
        scaled(release, ratio),
        scaled(vowel, ratio),
        scaled(beat, ratio),
        scaled(steadyBegin, ratio),
        scaled(steadyEnd, ratio),
        nasal.isEmpty() ? nasal : OptionalInt.of(scaled(nasal.getAsInt(), ratio)),
        scaled(end, ratio),
        pitchMarks.stream().map(mark -> scaled(mark, ratio)).distinct().toList());
  }

  private static int scaled(int frame, double ratio) {
    return (int) Math.round(frame * ratio);
  }
}
