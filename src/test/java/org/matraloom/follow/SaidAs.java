package org.matraloom.follow;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.matraloom.notation.ScoreReader;
import org.matraloom.pulse.PulseLine;
import org.matraloom.schedule.ScoreTimeline;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;
import org.matraloom.score.Performance;

/** A score, and takes of it in which every sollu is where the test puts it. */
public final class SaidAs {

  /** Eight beats of four matras, then eight of five, at 80 beats a minute: 0.75 s a beat. */
  public static final String FOUR_AND_FIVE =
      """
      title Puddle Count
      tala adi
      tempo 80
      Four = (takadimi) x8
      Five = (takatakita) x8
      perform
        Four nadai 4
        Five nadai 5
      """;

  public static final double BEAT = 0.75;

  private SaidAs() {}

  public static Timeline timeline(String score) {
    return ScoreTimeline.of(
        Performance.of(
            ScoreReader.read(score, "puddle.loom", Lexicon.standard()).composition().orElseThrow()),
        0);
  }

  public static List<ExpectedSollu> expected(String score) {
    return ExpectedSollu.of(timeline(score));
  }

  /** A pulse of 0.75 s a beat that begins at 1 s. */
  public static PulseLine line() {
    return new PulseLine(0, BEAT, 0, 1);
  }

  /** All sollus, each moved to another beat; deviations are from {@link #line()}. */
  public static List<SaidSollu> moved(List<ExpectedSollu> expected, DoubleUnaryOperator move) {
    List<SaidSollu> said = new ArrayList<>();
    for (int k = 0; k < expected.size(); k++) {
      double beat = expected.get(k).beat().toDouble();
      double felt = line().secondsAt(move.applyAsDouble(beat), 1);
      said.add(new SaidSollu(k, 1, felt - 0.01, felt, felt - line().secondsAt(beat, 1)));
    }
    return said;
  }

  /** All sollus as the score has them. */
  public static List<SaidSollu> even(List<ExpectedSollu> expected) {
    return moved(expected, beat -> beat);
  }
}
