package org.matraloom.follow;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.matraloom.time.Ratio;

/**
 * How much of the score could have been recorded.
 *
 * @param from the first sollu of it, its place among {@link Alignment#expected()}
 * @param to one more than the last
 */
public record RecordedRange(int from, int to) {

  /**
   * A recording that holds the whole score.
   *
   * @param sollus how many the score asks for
   * @return all of them
   */
  public static RecordedRange whole(int sollus) {
    return new RecordedRange(0, sollus);
  }

  /**
   * How many sollus could have been recorded.
   *
   * @return at least 0
   */
  public int size() {
    return to - from;
  }

  /**
   * Whether a sollu could have been recorded.
   *
   * @param place its place among the expected sollus
   * @return false if it lies before the beginning of the recording, or after its end
   */
  public boolean holds(int place) {
    return place >= from && place < to;
  }

  /**
   * Where the same words stand elsewhere in the score, in the same times or all at another speed: a
   * part of a take does not tell which of them it is.
   *
   * @param expected the sollus of the score
   * @return the first place of the first such passage; empty if there is none
   */
  public OptionalInt twin(List<ExpectedSollu> expected) {
    return IntStream.rangeClosed(0, expected.size() - size())
        .filter(other -> other != from)
        .filter(
            other -> IntStream.range(0, size()).allMatch(step -> isAlike(expected, other, step)))
        .findFirst();
  }

  private boolean isAlike(List<ExpectedSollu> expected, int other, int step) {
    ExpectedSollu here = expected.get(from + step);
    ExpectedSollu there = expected.get(other + step);
    Ratio speed = Ratio.of(expected.get(from).matrasPerBeat(), expected.get(other).matrasPerBeat());
    Ratio hereBeats = here.beat().minus(expected.get(from).beat());
    Ratio thereBeats = there.beat().minus(expected.get(other).beat());
    return here.sollu().sound().equals(there.sollu().sound())
        && hereBeats.times(speed).equals(thereBeats);
  }
}
