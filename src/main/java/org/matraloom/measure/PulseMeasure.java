package org.matraloom.measure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseLine;
import org.matraloom.pulse.RobustStatistics;
import org.matraloom.time.MeasuredTempo;

/** Sums up the pulse of a take: {@link Pulse}. */
final class PulseMeasure {

  private PulseMeasure() {}

  /**
   * The pulse.
   *
   * @param expected the sollus of the score
   * @param said what was said, at least one
   * @param guide where the guide was heard, if that is known
   * @return the pulse
   */
  static Pulse of(List<ExpectedSollu> expected, SaidSollus said, Optional<GuideStart> guide) {
    double[] beats =
        said.sollus().stream()
            .mapToDouble(each -> expected.get(each.place()).beat().toDouble())
            .sorted()
            .toArray();
    PulseLine line = said.line();
    double first = line.beatSeconds(beats[0]);
    double last = line.beatSeconds(beats[beats.length - 1]);
    double middle = line.beatSeconds((beats[0] + beats[beats.length - 1]) / 2);
    double tempo = MeasuredTempo.ofBeat(middle).beatsPerMinute();
    double spread =
        RobustStatistics.spreadAroundZero(
            said.sollus().stream().mapToDouble(SaidSollu::deviationSeconds).toArray());
    OptionalDouble lead =
        guide.isPresent()
            ? guide.get().leadSeconds(expected, said.sollus(), tempo)
            : OptionalDouble.empty();
    return new Pulse(tempo, 100 * (first / last - 1), spread, lead, line);
  }
}
