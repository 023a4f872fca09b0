package org.matraloom.follow;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;
import org.matraloom.onset.SoundLevels;
import org.matraloom.pulse.RobustStatistics;

/**
 * Leaves out a first or a last sollu of a finished pairing that nothing speaks for: the sound is
 * far from its place and like none of the sollus, or far from its place, unlike its sollu, and the
 * sollus between it and the others are missing. A take that breaks off before its end is often
 * followed by a clap, and before a voiced stop one may hum.
 */
final class LoneEnds {

  /** A sound so far from its place, in matras, is not said in it. */
  private static final double FAR_MATRAS = 0.35;

  /** What speaks by so much against every sollu is none. */
  private static final double UNLIKE_GAIN = -5;

  /** The place is told by so many sollus beside it. */
  private static final int NEAR = 8;

  private final List<ExpectedSollu> asked;
  private final SoundLevels levels;
  private final List<Onset> onsets;
  private final List<Double> lagSeconds;

  /**
   * Prepares to look.
   *
   * @param asked the sollus of the score
   * @param levels the recording
   * @param onsets all onsets, in order of time
   * @param lagSeconds for each sollu, how long before its beat it is heard; empty if not known
   */
  LoneEnds(
      List<ExpectedSollu> asked, SoundLevels levels, List<Onset> onsets, List<Double> lagSeconds) {
    this.asked = asked;
    this.levels = levels;
    this.onsets = onsets;
    this.lagSeconds = lagSeconds;
  }

  /**
   * The pairs without such ends.
   *
   * @param said in order of time
   */
  List<Alignment.Said> leftOut(List<Alignment.Said> said) {
    if (said.size() <= NEAR + 1 || lagSeconds.isEmpty()) {
      return said;
    }
    Alignment.Said first = said.get(0);
    Alignment.Said last = said.get(said.size() - 1);
    List<Alignment.Said> begin = said.subList(1, NEAR + 1);
    List<Alignment.Said> end = said.subList(said.size() - 1 - NEAR, said.size() - 1);
    boolean noFirst =
        first.sollu() == 0
            && isFar(first, begin)
            && models(said, 0).likestOfAll(first.onset()) <= UNLIKE_GAIN;
    boolean noLast =
        last.sollu() == asked.size() - 1
            && end.get(NEAR - 1).sollu() < last.sollu() - 1
            && isFar(last, end)
            && models(said, said.size() - 1).gain(last.sollu(), last.onset()) <= 0;
    return said.subList(noFirst ? 1 : 0, said.size() - (noLast ? 1 : 0));
  }

  /** Whether a sound is far from where others have its sollu, at their own speed. */
  private boolean isFar(Alignment.Said end, List<Alignment.Said> near) {
    int half = NEAR / 2;
    double[] slopes =
        IntStream.range(0, half)
            .filter(i -> beats(near.get(i), near.get(i + half)) > 0)
            .mapToDouble(
                i ->
                    (felt(near.get(i + half)) - felt(near.get(i)))
                        / beats(near.get(i), near.get(i + half)))
            .toArray();
    double beatSeconds = RobustStatistics.median(slopes);
    double due =
        RobustStatistics.median(
            near.stream().mapToDouble(s -> felt(s) + beats(s, end) * beatSeconds).toArray());
    double matra = beatSeconds / asked.get(end.sollu()).matrasPerBeat();
    return matra > 0 && Math.abs(felt(end) - due) > FAR_MATRAS * matra;
  }

  private SolluModels models(List<Alignment.Said> said, int without) {
    List<Alignment.Said> others = new ArrayList<>(said);
    others.remove(without);
    SoundColours colours = SoundColours.of(levels, onsets);
    int[] sollus = ExpectedSollu.kinds(asked);
    int[] inTurn = SoundEvidence.inTurn(sollus.length);
    return SolluModels.of(colours, SoundEvidence.kinds(colours, sollus, inTurn, said), others);
  }

  private double felt(Alignment.Said said) {
    return onsets.get(said.onset()).seconds() + lagSeconds.get(said.sollu());
  }

  private double beats(Alignment.Said from, Alignment.Said to) {
    return asked.get(to.sollu()).beat().minus(asked.get(from.sollu()).beat()).toDouble();
  }
}
