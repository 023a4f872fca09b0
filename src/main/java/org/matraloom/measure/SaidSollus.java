package org.matraloom.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.FeltBeat;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseDeviation;
import org.matraloom.pulse.PulseFit;
import org.matraloom.pulse.PulseLine;
import org.matraloom.pulse.PulseRuns;
import org.matraloom.pulse.RobustStatistics;
import org.matraloom.score.Lexicon;

/**
 * What was said when, against the pulse of the take, which is found on the way.
 *
 * @param sollus in order of time
 * @param line the pulse
 */
record SaidSollus(List<SaidSollu> sollus, PulseLine line) {

  /** From here on the usual lags are not this performer's. */
  private static final double UNUSUAL_SECONDS = 0.008;

  /** Fewer sollus have no pulse. */
  static final int LEAST = 4;

  /** So many sollus are the end of a take. */
  private static final int END_SOLLUS = 3;

  /** Close sollus leave less time for a consonant: at most this share of the time between them. */
  private static final double MOST_OF_GAP = 0.4;

  private static final int LEAST_BEFORE_END = 40;

  /** The end is odd if it is off by so many times the spread before it. */
  private static final double ODD_SPREADS = 2.5;

  /**
   * Places every sollu of an alignment.
   *
   * @param alignment with at least {@link #LEAST} sollus on different beats
   * @param lexicon tells the consonants
   * @return the sollus and the pulse
   */
  static SaidSollus of(Alignment alignment, Lexicon lexicon) {
    List<ExpectedSollu> expected = alignment.expected();
    List<FeltBeat> kinds =
        expected.stream().map(each -> FeltBeat.of(each.sollu(), lexicon)).toList();
    double[] usual = FeltBeat.usualLags();
    if (!alignment.lagSeconds().isEmpty()) {
      double[] learnt = learnt(kinds, alignment);
      if (isUnusual(learnt, byKind(usual, kinds), alignment)) {
        return with(learnt, alignment);
      }
    }
    SaidSollus first = with(byKind(usual, kinds), alignment).wandering(expected);
    return with(byKind(FeltLags.of(expected, kinds, first.sollus), kinds), alignment);
  }

  /**
   * The same with the pulse found again without what is said in a bad habit: of the rounds that
   * have one, only the sollus on the beat count, and of those at the old speed none.
   *
   * @param expected the sollus of the score
   * @param habits what was found
   * @return the same sollus, their deviations measured again
   */
  SaidSollus without(List<ExpectedSollu> expected, List<HabitFound> habits) {
    List<SaidSollu> trusted =
        sollus.stream()
            .filter(said -> HabitFound.isTrusted(habits, expected.get(said.place())))
            .toList();
    long runs = trusted.stream().mapToInt(SaidSollu::run).distinct().count();
    return habits.isEmpty() || trusted.size() < LEAST || runs < line.runs()
        ? this
        : against(expected, sollus, fit(expected, trusted));
  }

  /**
   * The same against a pulse that wanders, where it does; the last sollus do not count for it, as
   * the landing is measured by it.
   *
   * @param expected the sollus of the score
   * @return the same sollus, their deviations measured again
   */
  SaidSollus wandering(List<ExpectedSollu> expected) {
    List<SaidSollu> before = sollus.subList(0, Math.max(0, sollus.size() - END_SOLLUS));
    double[] matras =
        before.stream()
            .map(said -> expected.get(said.place()))
            .mapToDouble(asked -> line.beatSeconds(asked.beat().toDouble()) / asked.matrasPerBeat())
            .toArray();
    PulseDeviation wander =
        PulseDeviation.of(
            before.stream().mapToDouble(s -> expected.get(s.place()).beat().toDouble()).toArray(),
            before.stream().mapToDouble(SaidSollu::deviationSeconds).toArray(),
            before.stream().mapToInt(SaidSollu::run).toArray(),
            RobustStatistics.median(matras));
    return wander == PulseDeviation.NONE ? this : against(expected, sollus, line.wandering(wander));
  }

  /**
   * The same without what is no sollu after all.
   *
   * @param alignment holds the sollus that are kept
   * @return the same pulse
   */
  SaidSollus only(Alignment alignment) {
    Set<Double> kept =
        alignment.said().stream().map(alignment::secondsOf).collect(Collectors.toSet());
    return new SaidSollus(
        sollus.stream().filter(each -> kept.contains(each.onsetSeconds())).toList(), line);
  }

  static double[] byKind(double[] lags, List<FeltBeat> kinds) {
    return kinds.stream().mapToDouble(kind -> lags[kind.ordinal()]).toArray();
  }

  /**
   * Whether a performer's lags are other than usual; where they are not, the usual ones are surer.
   */
  private static boolean isUnusual(double[] learnt, double[] usual, Alignment alignment) {
    return RobustStatistics.median(
            alignment.said().stream()
                .mapToDouble(said -> Math.abs(learnt[said.sollu()] - usual[said.sollu()]))
                .toArray())
        > UNUSUAL_SECONDS;
  }

  /** What was learnt tells sollus from one another; how late all are felt is taken as usual. */
  static double[] learnt(List<FeltBeat> kinds, Alignment alignment) {
    double mean =
        alignment.said().stream()
            .mapToDouble(said -> kinds.get(said.sollu()).usualLagSeconds())
            .average()
            .orElse(0);
    return alignment.lagSeconds().stream().mapToDouble(lag -> lag + mean).toArray();
  }

  private static SaidSollus with(double[] lags, Alignment alignment) {
    List<ExpectedSollu> expected = alignment.expected();
    List<Alignment.Said> said = alignment.said();
    int[] place = said.stream().mapToInt(Alignment.Said::sollu).toArray();
    double[] felt = new double[place.length];
    for (int i = 0; i < felt.length; i++) {
      double onset = alignment.secondsOf(said.get(i));
      double gap = i == 0 ? onset : onset - alignment.secondsOf(said.get(i - 1));
      felt[i] = onset + Math.min(lags[place[i]], MOST_OF_GAP * gap);
    }
    double[] beat =
        IntStream.of(place).mapToDouble(k -> expected.get(k).beat().toDouble()).toArray();
    double[] matra =
        IntStream.of(place).mapToDouble(k -> 1.0 / expected.get(k).matrasPerBeat()).toArray();
    int[] run = PulseRuns.of(place, beat, matra, felt);
    List<SaidSollu> sollus = new ArrayList<>();
    for (int i = 0; i < run.length; i++) {
      sollus.add(new SaidSollu(place[i], run[i], alignment.secondsOf(said.get(i)), felt[i], 0));
    }
    SaidSollus all = against(expected, sollus, fit(expected, sollus));
    return all.withoutOddEnd(expected);
  }

  /**
   * Where the last sollus are off the pulse of all before them, that pulse counts; otherwise a
   * landing that is missed would bend the pulse that it is measured by.
   */
  private SaidSollus withoutOddEnd(List<ExpectedSollu> expected) {
    if (sollus.size() < LEAST_BEFORE_END + END_SOLLUS) {
      return this;
    }
    int from = sollus.size() - END_SOLLUS;
    PulseLine lineBefore = fit(expected, sollus.subList(0, from));
    if (lineBefore.runs() < line.runs()) {
      return this;
    }
    SaidSollus other = against(expected, sollus, lineBefore);
    double[] before =
        other.sollus.subList(0, from).stream().mapToDouble(SaidSollu::deviationSeconds).toArray();
    double[] end =
        other.sollus.subList(from, sollus.size()).stream()
            .mapToDouble(SaidSollu::deviationSeconds)
            .toArray();
    double odd = ODD_SPREADS * RobustStatistics.spreadAroundZero(before);
    return Math.abs(RobustStatistics.median(end)) > odd ? other : this;
  }

  private static PulseLine fit(List<ExpectedSollu> expected, List<SaidSollu> sollus) {
    return new PulseFit(
            sollus.stream().mapToDouble(s -> expected.get(s.place()).beat().toDouble()).toArray(),
            sollus.stream().mapToDouble(SaidSollu::feltSeconds).toArray(),
            sollus.stream().mapToInt(SaidSollu::run).toArray())
        .line();
  }

  private static SaidSollus against(
      List<ExpectedSollu> expected, List<SaidSollu> sollus, PulseLine line) {
    return new SaidSollus(
        sollus.stream()
            .map(
                s -> {
                  double beat = expected.get(s.place()).beat().toDouble();
                  double late = s.feltSeconds() - line.secondsAt(beat, s.run());
                  return new SaidSollu(s.place(), s.run(), s.onsetSeconds(), s.feltSeconds(), late);
                })
            .toList(),
        line);
  }
}
