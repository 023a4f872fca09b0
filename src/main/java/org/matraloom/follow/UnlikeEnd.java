package org.matraloom.follow;

import java.util.List;
import java.util.Optional;
import org.matraloom.onset.Onset;
import org.matraloom.onset.SoundLevels;

/**
 * Doubts a last sollu that is none by its sound: of a sound in its place that is like no sollu of
 * the take it cannot be told whether it was meant. If it is hardly an onset less is asked for. The
 * vowel of a long n right before it is heard to begin, too, with a sure onset.
 */
final class UnlikeEnd {

  /** The sounds of a take tell its sollus apart if they speak for them by so much in the mean. */
  private static final double TELLING_GAIN = 0.8;

  /** What speaks by so much against every sollu is like none. */
  private static final double UNLIKE_GAIN = -1.2;

  /** What is surer is an onset of somebody who reached the end. */
  private static final double SURE_CONFIDENCE = 0.75;

  private static final int LEAST_SOLLUS = 24;

  /** Of what speaks by so much against every sollu even a sure onset is none. */
  private static final double NONE_GAIN = -2;

  /** What speaks by so much against the sollu and hardly for another is none either. */
  private static final double OTHER_GAIN = -6;

  private static final double LIKE_GAIN = 0.5;

  /** Sure onsets are doubted from so many sollus on. */
  private static final int FEWEST_SOLLUS = 16;

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
            || isUnlikeItself(asked, levels, onsets, said)
        ? Optional.of(new EndAmbiguity(true, EndAmbiguity.End.UNLIKE))
        : Optional.empty();
  }

  /** Whether the last sollu is there and sounds neither as it did before nor like another. */
  private static boolean isUnlikeItself(
      List<ExpectedSollu> asked,
      SoundLevels levels,
      List<Onset> onsets,
      List<Alignment.Said> said) {
    if (said.size() < FEWEST_SOLLUS || said.get(said.size() - 1).sollu() < asked.size() - 1) {
      return false;
    }
    Alignment.Said last = said.get(said.size() - 1);
    List<Alignment.Said> before = said.subList(0, said.size() - 1);
    SoundColours colours = SoundColours.of(levels, onsets);
    int[] sollus = ExpectedSollu.kinds(asked);
    int[] inTurn = SoundEvidence.inTurn(sollus.length);
    SolluModels models =
        SolluModels.of(colours, SoundEvidence.kinds(colours, sollus, inTurn, said), before);
    double likest = models.likestOfAll(last.onset());
    double own = likest - models.fallsShort(last.sollu(), last.onset());
    return models.isKnown(last.sollu())
        && telling(models, before) >= TELLING_GAIN
        && (likest <= NONE_GAIN || own <= OTHER_GAIN && likest <= LIKE_GAIN);
  }

  private static double telling(SolluModels models, List<Alignment.Said> said) {
    return said.stream()
        .mapToDouble(each -> models.gain(each.sollu(), each.onset()))
        .average()
        .orElse(0);
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
    return models.isKnown(asked.size() - 1)
        && telling(models, before) >= TELLING_GAIN
        && models.likestOfAll(last.onset()) <= UNLIKE_GAIN;
  }
}
