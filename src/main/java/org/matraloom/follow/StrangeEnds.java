package org.matraloom.follow;

import java.util.List;
import java.util.function.DoublePredicate;
import org.matraloom.onset.SoundLevels;

/**
 * Takes a last sollu for what it is where a clap was heard in place of a sollu that was not said. A
 * first sollu often falls on a clap, and sounds like none for that.
 */
public final class StrangeEnds {

  /** What speaks by so much against every sollu is none. */
  private static final double UNLIKE_GAIN = -2.5;

  /** What speaks by so much against its sollu and by so much for another is the other. */
  private static final double OTHER_GAIN = -1;

  private static final double LIKE_GAIN = 0.5;

  private static final int LEAST_SOLLUS = 12;

  private StrangeEnds() {}

  /**
   * The same alignment without a last sollu that is like none and comes with a clap.
   *
   * @param alignment which sounds are sollus
   * @param levels the recording
   * @param isClapped whether a clap is due at a moment, in seconds
   * @return the same alignment if its end sounds like a sollu, or if that cannot be told
   */
  public static Alignment leftOut(
      Alignment alignment, SoundLevels levels, DoublePredicate isClapped) {
    List<Alignment.Said> said = alignment.said();
    Alignment.Said last = said.get(said.size() - 1);
    if (said.size() < LEAST_SOLLUS || !isClapped.test(alignment.secondsOf(last))) {
      return alignment;
    }
    SolluModels models = models(alignment, levels, last);
    List<Alignment.Said> before = said.subList(0, said.size() - 1);
    return models.likestOfAll(last.onset()) > UNLIKE_GAIN ? alignment : alignment.only(before);
  }

  /**
   * Whether the sound of the last sollu is that of another: then a sound beside it may be the last
   * sollu, though it comes with a clap.
   *
   * @param alignment which sounds are sollus; at least one is
   * @param levels the recording
   * @return false if it does not, or if it is not known how the sollu sounds
   */
  public static boolean isOther(Alignment alignment, SoundLevels levels) {
    List<Alignment.Said> said = alignment.said();
    Alignment.Said last = said.get(said.size() - 1);
    if (said.size() < LEAST_SOLLUS) {
      return false;
    }
    SolluModels models = models(alignment, levels, last);
    return models.gain(last.sollu(), last.onset()) <= OTHER_GAIN
        && models.likestOfAll(last.onset()) >= LIKE_GAIN;
  }

  private static SolluModels models(
      Alignment alignment, SoundLevels levels, Alignment.Said without) {
    SoundColours colours = SoundColours.of(levels, alignment.onsets());
    int[] sollus = ExpectedSollu.kinds(alignment.expected());
    int[] inTurn = SoundEvidence.inTurn(sollus.length);
    List<Alignment.Said> said = alignment.said();
    return SolluModels.of(
        colours,
        SoundEvidence.kinds(colours, sollus, inTurn, said),
        said.stream().filter(each -> !each.equals(without)).toList());
  }
}
