package org.matraloom.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.RobustStatistics;

/**
 * Where the last sollu is due by the pulse before it, and how sure that is.
 *
 * <p>It is not known whether the tempo was even, grew, or broke where the nadai changes, and it is
 * carried on otherwise in each case. So the beat is the mean of all, each by its likelihood, and
 * its doubt is that of each and how far they are apart (J. A. Hoeting and others, Stat. Sci. 14
 * (1999) 382-417). The last sollu itself is not asked: it would draw the pulse to wherever the take
 * ends.
 *
 * @param dueSeconds when it is due
 * @param doubtSeconds the standard error of that, at least {@link EndDoubt#LEAST_SECONDS}
 * @param ownSeconds how far the same sollu is later than its beat as a rule; 0 if it is not known
 * @param ownDoubtSeconds the standard error of that
 */
record CarriedPulse(
    double dueSeconds, double doubtSeconds, double ownSeconds, double ownDoubtSeconds) {

  /** Of fewer sollus nothing is carried on. */
  private static final int LEAST_SOLLUS = 8;

  /** Fewer sollus, or fewer beats, do not tell a growing tempo from an even one. */
  private static final int LEAST_FOR_GROWTH = 16;

  private static final double LEAST_BEATS_FOR_GROWTH = 6;

  /** Nobody speaks more evenly. */
  private static final double LEAST_SPREAD_SECONDS = 0.003;

  /** A sollu is heard so much earlier or later after one sollu than after another. */
  private static final double CONTEXT_SECONDS = 0.010;

  /** What is farther off says nothing of how a sollu is felt. */
  private static final double FARTHEST_SECONDS = 0.08;

  /**
   * Carries the pulse on to the last sollu.
   *
   * @param expected the sollus of the score
   * @param begun what was said since the reciter last began, in order of time; the last is the last
   *     of the score
   * @param habits of what is said in a bad habit only the beat counts, or nothing
   * @param lagDoubtSeconds how far a sollu's beat may be from where it is felt, beforehand
   * @return empty if too little was said
   */
  static Optional<CarriedPulse> of(
      List<ExpectedSollu> expected,
      List<SaidSollu> begun,
      List<HabitFound> habits,
      double lagDoubtSeconds) {
    List<SaidSollu> before =
        begun.subList(0, begun.size() - 1).stream()
            .filter(said -> HabitFound.isTrusted(habits, expected.get(said.place())))
            .toList();
    if (before.size() < LEAST_SOLLUS) {
      return Optional.empty();
    }
    SaidSollu last = begun.get(begun.size() - 1);
    double beat = beat(expected, last);
    double[] seams = PulseBefore.seams(expected, before);
    List<GrowthOrBreak.Shape> shapes =
        GrowthOrBreak.withWholeSlips(expected, before, seams).stream()
            .filter(shape -> shape.kind() != GrowthOrBreak.Kind.GROWN || mayGrow(expected, before))
            .toList();
    double least = shapes.stream().mapToDouble(GrowthOrBreak.Shape::cost).min().orElseThrow();
    double[] weight =
        shapes.stream().mapToDouble(shape -> Math.exp((least - shape.cost()) / 2)).toArray();
    double sum = Arrays.stream(weight).sum();
    double due = 0;
    double square = 0;
    double variance = 0;
    GrowthOrBreak.Shape best = shapes.get(0);
    for (int i = 0; i < weight.length; i++) {
      GrowthOrBreak.Shape shape = shapes.get(i);
      double bent = shape.kind() == GrowthOrBreak.Kind.GROWN ? beat : beat(expected, before.get(0));
      double at = shape.fit().secondsAt(beat, bent, 1);
      double spread = spread(shape);
      due += weight[i] / sum * at;
      square += weight[i] / sum * at * at;
      variance += weight[i] / sum * spread * spread * shape.fit().share(beat, bent, 1);
      best = shape.cost() < best.cost() ? shape : best;
    }
    double doubt = Math.sqrt(variance + Math.max(0, square - due * due));
    Lag lag = lag(expected, before, last, best, lagDoubtSeconds);
    return Optional.of(
        new CarriedPulse(
            due, Math.hypot(EndDoubt.LEAST_SECONDS, doubt), lag.lateSeconds, lag.doubtSeconds));
  }

  /** How much later than its beat a sollu is as a rule, and the standard error of that. */
  private record Lag(double lateSeconds, double doubtSeconds) {

    /** The same, with what the deviations of some sounds say beside it. */
    Lag with(double[] off, double spread, double apartSeconds) {
      double[] more = Arrays.stream(off).map(each -> each - lateSeconds).toArray();
      double known = spread * spread / (apartSeconds * apartSeconds);
      return new Lag(
          lateSeconds + RobustStatistics.median(more) * off.length / (off.length + known),
          spread / Math.sqrt(off.length + known));
    }
  }

  /**
   * By how much the last sollu was later than its beat before: all its sounds tell, and more than
   * others those after the same sollu in the same nadai, as what goes before changes where a sound
   * is heard to begin.
   */
  private static Lag lag(
      List<ExpectedSollu> expected,
      List<SaidSollu> before,
      SaidSollu last,
      GrowthOrBreak.Shape best,
      double lagDoubtSeconds) {
    double spread = spread(best);
    Lag whole =
        new Lag(0, lagDoubtSeconds)
            .with(own(expected, before, last, best, 1), spread, lagDoubtSeconds);
    double[] alike = own(expected, before, last, best, 2);
    return alike.length == 0 ? whole : whole.with(alike, spread, CONTEXT_SECONDS);
  }

  /** How far the sounds of the last sollu were off before, after the same sollus as it. */
  private static double[] own(
      List<ExpectedSollu> expected,
      List<SaidSollu> before,
      SaidSollu last,
      GrowthOrBreak.Shape best,
      int sollus) {
    double[] off = best.fit().offSeconds();
    return IntStream.range(0, off.length)
        .filter(i -> isAlike(expected, before.get(i).place(), last.place(), sollus))
        .mapToDouble(i -> off[i])
        .filter(each -> Math.abs(each) < FARTHEST_SECONDS)
        .toArray();
  }

  /** Whether two places end the same words, so many sollus long, if more than one in one nadai. */
  private static boolean isAlike(List<ExpectedSollu> expected, int a, int b, int sollus) {
    if (a + 1 < sollus || b + 1 < sollus) {
      return false;
    }
    return IntStream.range(0, sollus)
            .allMatch(
                i ->
                    expected.get(a - i).sollu().sound().equals(expected.get(b - i).sollu().sound()))
        && (sollus == 1 || expected.get(a).matrasPerBeat() == expected.get(b).matrasPerBeat());
  }

  private static double spread(GrowthOrBreak.Shape shape) {
    double[] off = shape.fit().offSeconds();
    int numbers = (shape.kind() == GrowthOrBreak.Kind.EVEN ? 1 : 2) + shape.fit().runs();
    double free = off.length / (double) Math.max(1, off.length - numbers);
    return Math.max(LEAST_SPREAD_SECONDS, RobustStatistics.spreadAroundZero(off) * Math.sqrt(free));
  }

  private static boolean mayGrow(List<ExpectedSollu> expected, List<SaidSollu> said) {
    double beats = beat(expected, said.get(said.size() - 1)) - beat(expected, said.get(0));
    return said.size() >= LEAST_FOR_GROWTH && beats >= LEAST_BEATS_FOR_GROWTH;
  }

  private static double beat(List<ExpectedSollu> expected, SaidSollu said) {
    return expected.get(said.place()).beat().toDouble();
  }
}
