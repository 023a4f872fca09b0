package org.matraloom.verdict;

import java.util.List;
import java.util.Optional;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.RecordedRange;
import org.matraloom.measure.TakeFindings;
import org.matraloom.score.Performance;

/** Says where a recording begins and ends that does not hold the whole score. */
final class StretchWords {

  private StretchWords() {}

  /**
   * What is not in the recording.
   *
   * @param findings what was measured
   * @param performance what was to be said
   * @return nothing if the whole score could be in it
   */
  static Optional<String> of(TakeFindings findings, Performance performance) {
    List<ExpectedSollu> expected = findings.alignment().expected();
    RecordedRange stretch = findings.alignment().recorded();
    TakePlaces places = new TakePlaces(performance, expected);
    StringBuilder words = new StringBuilder();
    if (stretch.from() > 0) {
      words.append("The recording begins at ").append(places.of(stretch.from()));
    }
    if (stretch.to() < expected.size()) {
      words
          .append(stretch.from() > 0 ? " and ends at " : "The recording ends at ")
          .append(places.of(stretch.to() - 1));
    }
    if (words.isEmpty()) {
      return Optional.empty();
    }
    int left = expected.size() - stretch.size();
    words.append(left == 1 ? "; the other sollu does" : "; the other " + left + " sollus do");
    words.append(" not count.");
    stretch
        .twin(expected)
        .ifPresent(
            twin ->
                words
                    .append(" It may as well begin at ")
                    .append(places.of(twin))
                    .append(", where the same words are."));
    return Optional.of(words.toString());
  }
}
