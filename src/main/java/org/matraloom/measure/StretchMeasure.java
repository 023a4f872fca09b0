package org.matraloom.measure;

import java.util.List;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.RecordedRange;
import org.matraloom.follow.SaidSollu;
import org.matraloom.onset.SoundLevels;
import org.matraloom.pulse.PulseLine;

/**
 * Tells what was never recorded from what was not said: {@link RecordedRange}.
 *
 * <p>The pulse of the take says when the first and the last sollu of the score would have fallen.
 * If that is within the recording, there was time for all sollus, and those that are not heard were
 * not said. If not, the recording begins (or ends) with the first (the last) that is heard. A few
 * that fall within it, where it is not silent, were said and not heard.
 */
final class StretchMeasure {

  /** A sollu cut off by the edge of the recording is not heard. */
  private static final double EDGE_SECONDS = 0.1;

  /** More than so many in a row are not overheard. */
  private static final int MOST_UNHEARD = 5;

  private final List<ExpectedSollu> expected;
  private final PulseLine line;
  private final SoundLevels levels;
  private final double lengthSeconds;
  private final double quietDb;

  private StretchMeasure(
      Alignment alignment, PulseLine line, SoundLevels levels, double lengthSeconds) {
    this.expected = alignment.expected();
    this.line = line;
    this.levels = levels;
    this.lengthSeconds = lengthSeconds;
    this.quietDb = levels.quietDb(alignment.saidSeconds());
  }

  /**
   * What could have been recorded.
   *
   * @param alignment what was heard
   * @param said the same against the pulse, at least one
   * @param levels the recording
   * @param lengthSeconds how long it is
   * @return the stretch, which holds all that was heard
   */
  static RecordedRange of(
      Alignment alignment, SaidSollus said, SoundLevels levels, double lengthSeconds) {
    StretchMeasure measure = new StretchMeasure(alignment, said.line(), levels, lengthSeconds);
    List<SaidSollu> sollus = said.sollus();
    int lowest = sollus.stream().mapToInt(SaidSollu::place).min().orElseThrow();
    int highest = sollus.stream().mapToInt(SaidSollu::place).max().orElseThrow();
    SaidSollu first = sollus.get(0);
    SaidSollu last = sollus.get(sollus.size() - 1);
    return new RecordedRange(
        first.place() == lowest ? measure.from(first) : lowest,
        last.place() == highest ? measure.to(last) : highest + 1);
  }

  private int from(SaidSollu first) {
    if (isWithin(0, first.run())) {
      return 0;
    }
    int from = first.place();
    while (from > 0 && isWithin(from - 1, first.run())) {
      from--;
    }
    return isOverheard(first.place() - from, 0, first.onsetSeconds()) ? from : first.place();
  }

  private int to(SaidSollu last) {
    if (isWithin(expected.size() - 1, last.run())) {
      return expected.size();
    }
    int to = last.place() + 1;
    while (to < expected.size() && isWithin(to, last.run())) {
      to++;
    }
    int count = to - last.place() - 1;
    return isOverheard(count, last.onsetSeconds(), lengthSeconds) ? to : last.place() + 1;
  }

  private boolean isWithin(int place, int run) {
    double seconds = line.secondsAt(expected.get(place).beat().toDouble(), run);
    return seconds >= EDGE_SECONDS && seconds <= lengthSeconds - EDGE_SECONDS;
  }

  /** Whether there is sound for most of the time in which some sollus were not heard. */
  private boolean isOverheard(int count, double fromSeconds, double toSeconds) {
    double quiet =
        levels
            .longestQuiet(fromSeconds, toSeconds, quietDb)
            .map(SoundLevels.Quiet::seconds)
            .orElse(0.0);
    return count <= MOST_UNHEARD && quiet < (toSeconds - fromSeconds) / 2;
  }
}
