package org.matraloom.follow;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;

/**
 * Sounds left over right before the first sollu or right after the last that are like sollus: as
 * many words were said as the score has, and one more, or one on the way was not what it seems.
 */
final class LeftOverEnds {

  /** What is nearer than this to the first or the last is of the same sollu, in matras. */
  private static final double SAME_MATRAS = 0.65;

  /** A sound left over before the first is no farther than this, in matras. */
  private static final double BEFORE_MATRAS = 1.6;

  /** One after the last may be that sollu, come late. */
  private static final double AFTER_MATRAS = 2.5;

  private static final double SURE_CONFIDENCE = 0.5;

  /** A sound speaks for one of the sollus by so much. */
  private static final double LIKE_GAIN = 0.5;

  /** An end that speaks so much against its sollu may be another than it seems. */
  private static final double UNLIKE_GAIN = -1;

  private final List<Onset> onsets;
  private final List<Alignment.Said> said;
  private final PairingModel model;

  private LeftOverEnds(List<Onset> onsets, List<Alignment.Said> said, PairingModel model) {
    this.onsets = onsets;
    this.said = said;
    this.model = model;
  }

  /**
   * What cannot be told.
   *
   * @param onsets what was heard, in order of time
   * @param said the pairing
   * @param model what was learnt from it
   * @param matraSeconds the length of each sollu's matra at the tempo of the score
   * @return empty if nothing is left over there
   */
  static Optional<EndAmbiguity> of(
      List<Onset> onsets, List<Alignment.Said> said, PairingModel model, double[] matraSeconds) {
    if (said.size() < 2) {
      return Optional.empty();
    }
    LeftOverEnds ends = new LeftOverEnds(onsets, said, model);
    Alignment.Said first = said.get(0);
    Alignment.Said last = said.get(said.size() - 1);
    int sollus = matraSeconds.length;
    boolean before =
        first.sollu() == 0 && ends.isLeftOver(first, -1, matraSeconds[0] * model.stretch());
    boolean after =
        last.sollu() == sollus - 1
            && ends.isLeftOver(last, 1, matraSeconds[sollus - 1] * model.stretch());
    if (after) {
      return Optional.of(
          new EndAmbiguity(false, before ? EndAmbiguity.End.EITHER : EndAmbiguity.End.LAST));
    }
    return before ? Optional.of(new EndAmbiguity(false, EndAmbiguity.End.FIRST)) : Optional.empty();
  }

  /**
   * What cannot be told where the last sollu had no onset of its own and was found by its place
   * only: a sure sound after it may be that sollu, come late.
   *
   * @param asked the sollus of the score
   * @param onsets all onsets, in order of time
   * @param said the pairing
   * @return empty if the last sollu was heard, or nothing follows
   */
  static Optional<EndAmbiguity> afterFaint(
      List<ExpectedSollu> asked, List<Onset> onsets, List<Alignment.Said> said) {
    int count = said.size();
    if (count < 2 || said.get(count - 1).sollu() < asked.size() - 1) {
      return Optional.empty();
    }
    Onset last = onsets.get(said.get(count - 1).onset());
    Alignment.Said before = said.get(count - 2);
    double took = last.seconds() - onsets.get(before.onset()).seconds();
    double due = asked.get(asked.size() - 1).seconds() - asked.get(before.sollu()).seconds();
    double matra = Intervals.matras(asked)[asked.size() - 1] * took / due;
    return last.confidence() <= FaintSollus.CONFIDENCE
            && onsets.stream()
                .filter(onset -> onset.confidence() >= SURE_CONFIDENCE)
                .mapToDouble(onset -> onset.seconds() - last.seconds())
                .anyMatch(later -> later > SAME_MATRAS * matra && later <= AFTER_MATRAS * matra)
        ? Optional.of(new EndAmbiguity(false, EndAmbiguity.End.LAST))
        : Optional.empty();
  }

  private boolean isLeftOver(Alignment.Said end, int direction, double matraSeconds) {
    double farthest = (direction > 0 ? AFTER_MATRAS : BEFORE_MATRAS) * matraSeconds;
    double at = onsets.get(end.onset()).seconds();
    return IntStream.iterate(
            end.onset() + direction, j -> j >= 0 && j < onsets.size(), j -> j + direction)
        .takeWhile(j -> Math.abs(onsets.get(j).seconds() - at) <= farthest)
        .filter(j -> Math.abs(onsets.get(j).seconds() - at) > SAME_MATRAS * matraSeconds)
        .filter(j -> onsets.get(j).confidence() >= SURE_CONFIDENCE)
        .anyMatch(
            j ->
                model.sollus().likest(j) >= LIKE_GAIN
                    || model.sollus().gain(end.sollu(), end.onset()) <= UNLIKE_GAIN);
  }
}
