package org.matraloom.follow;

import java.util.List;
import java.util.Optional;
import org.matraloom.onset.Onset;
import org.matraloom.onset.SoundLevels;

/**
 * Doubts a last sollu that is none by its sound: of a sound in its place that is hardly an onset
 * and like no sollu of the take it cannot be told whether it was meant.
 */
final class UnlikeEnd {

  /** The sounds of a take tell its sollus apart if they speak for them by so much in the mean. */
  private static final double TELLING_GAIN = 0.8;

  /** What speaks by so much against every sollu is like none. */
  private static final double UNLIKE_GAIN = -1.2;

  /** What is surer is an onset of somebody who reached the end. */
  private static final double SURE_CONFIDENCE = 0.75;

  private static final int LEAST_SOLLUS = 24;

  private UnlikeEnd() {}

  /**
   * What cannot be told.
   *
   * @param asked the sollus of the score
   * @param levels the recording
   * @param onsets all onsets, in order of time
   * @param said which sollu is which
   * @return empty if the last sollu is missing, or sounds like one
   */
  static Optional<EndAmbiguity> of(
      List<ExpectedSollu> asked,
      SoundLevels levels,
      List<Onset> onsets,
      List<Alignment.Said> said) {
    boolean doubtful =
        !said.isEmpty()
            && onsets.get(said.get(said.size() - 1).onset()).confidence() < SURE_CONFIDENCE;
    return doubtful && isUnlike(asked, levels, onsets, said)
        ? Optional.of(new EndAmbiguity(true, EndAmbiguity.End.UNLIKE))
        : Optional.empty();
  }

  /** Whether the last sollu is there and its sound is like none of the sollus before it. */
  static boolean isUnlike(
      List<ExpectedSollu> asked,
      SoundLevels levels,
      List<Onset> onsets,
      List<Alignment.Said> said) {
    if (said.size() < LEAST_SOLLUS || said.get(said.size() - 1).sollu() < asked.size() - 1) {
      return false;
    }
    Alignment.Said last = said.get(said.size() - 1);
    List<Alignment.Said> before = said.subList(0, said.size() - 1);
    SolluModels models =
        SolluModels.of(SoundColours.of(levels, onsets), ExpectedSollu.kinds(asked), before);
    double telling =
        before.stream()
            .mapToDouble(each -> models.gain(each.sollu(), each.onset()))
            .average()
            .orElse(0);
    return models.isKnown(asked.size() - 1)
        && telling >= TELLING_GAIN
        && models.likestOfAll(last.onset()) <= UNLIKE_GAIN;
  }
}
