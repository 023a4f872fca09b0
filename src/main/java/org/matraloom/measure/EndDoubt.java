package org.matraloom.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.FeltBeat;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseLine;
import org.matraloom.pulse.RobustStatistics;
import org.matraloom.score.Lexicon;

/** How far the last sollu and its beat may be from where they were found. */
final class EndDoubt {

  /** From so many sounds on a sollu's lag is learnt. */
  private static final int ENOUGH_HEARD = 3;

  /** No performer's lags are nearer to the usual ones than this. */
  private static final double LEAST_LAG_SECONDS = 0.008;

  /** No beat is found more exactly than this. */
  static final double LEAST_SECONDS = 0.002;

  private EndDoubt() {}

  /**
   * How far the beat of a sollu is felt from where it is as a rule, before any of it was heard: as
   * far as that of this performer's other sollus.
   *
   * @param alignment what was heard
   * @param lexicon tells the consonants
   * @return a standard deviation in seconds, at least 8 ms
   */
  static double ofLag(Alignment alignment, Lexicon lexicon) {
    List<ExpectedSollu> expected = alignment.expected();
    if (alignment.lagSeconds().isEmpty()) {
      return LEAST_LAG_SECONDS;
    }
    Map<String, Long> heard =
        alignment.said().stream()
            .map(said -> expected.get(said.sollu()).sollu().sound())
            .collect(Collectors.groupingBy(sound -> sound, Collectors.counting()));
    List<FeltBeat> kinds =
        expected.stream().map(each -> FeltBeat.of(each.sollu(), lexicon)).toList();
    double[] learnt = SaidSollus.learnt(kinds, alignment);
    double[] usual = SaidSollus.byKind(FeltBeat.usualLags(), kinds);
    return Math.max(
        LEAST_LAG_SECONDS,
        Math.sqrt(
            alignment.said().stream()
                .mapToInt(Alignment.Said::sollu)
                .filter(k -> heard.get(expected.get(k).sollu().sound()) >= ENOUGH_HEARD)
                .mapToDouble(k -> Math.pow(learnt[k] - usual[k], 2))
                .average()
                .orElse(0)));
  }

  /**
   * The standard error of a pulse that is carried on to a beat: of a straight line of least
   * squares, or of a parabola if its tempo grows.
   *
   * @param line the pulse
   * @param run its run
   * @param said what it was found by
   * @param beat where each stands in the score, in beats
   * @param at the beat to which it is carried on
   * @return seconds, at least {@link #LEAST_SECONDS}
   */
  static double ofLine(
      PulseLine line, int run, List<SaidSollu> said, ToDoubleFunction<SaidSollu> beat, double at) {
    double[] off =
        said.stream()
            .mapToDouble(s -> s.feltSeconds() - line.secondsAt(beat.applyAsDouble(s), run))
            .toArray();
    boolean grows = line.beatSeconds(at) != line.beatSeconds(at - 1);
    double share = share(said.stream().mapToDouble(beat).toArray(), at, grows);
    return Math.hypot(LEAST_SECONDS, RobustStatistics.spreadAroundZero(off) * Math.sqrt(share));
  }

  /**
   * The variance of a fitted curve at a place, as a share of that of a single sollu: a sum over the
   * polynomials of degree 0, 1 and, if it grows, 2 that are orthogonal over the places of the
   * sollus.
   */
  private static double share(double[] places, double at, boolean grows) {
    double middle = Arrays.stream(places).average().orElse(at);
    double[] linear = Arrays.stream(places).map(x -> x - middle).toArray();
    double square = Arrays.stream(linear).map(x -> x * x).sum();
    double share = 1.0 / places.length;
    if (square > 0) {
      share += (at - middle) * (at - middle) / square;
    }
    if (grows && square > 0) {
      double slope = Arrays.stream(linear).map(x -> x * x * x).sum() / square;
      DoubleUnaryOperator bent = x -> x * x - slope * x - square / places.length;
      double own = Arrays.stream(linear).map(bent).map(y -> y * y).sum();
      double there = bent.applyAsDouble(at - middle);
      share += own > 0 ? there * there / own : 0;
    }
    return share;
  }
}
