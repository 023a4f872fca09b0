package org.matraloom.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.follow.SolluLikeness;
import org.matraloom.onset.OnsetCurve;
import org.matraloom.onset.SoundLevels;
import org.matraloom.pulse.RobustStatistics;

/** Tells whether a take can be judged: {@link Doubt}. */
final class DoubtMeasure {

  /** Of the sollus between the first and the last that were heard, at least this share. */
  private static final double LEAST_MATCHED = 0.6;

  /** A pulse this loose is none: a quarter of a matra. */
  private static final double LOOSEST_MATRAS = 0.25;

  private static final int LEAST_SOLLUS = 8;

  /**
   * Where more than this share of sollus is missed or added, it matters whether sounds taken for
   * the same sollu are alike: {@link SolluLikeness}.
   */
  private static final double LEAST_TROUBLE = 0.10;

  /** A part of a score fits another piece more easily than the whole does. */
  private static final double LEAST_TROUBLE_OF_PART = 0.05;

  /** From this share on this much likeness is asked for, of a part always. */
  private static final double MUCH_TROUBLE = 0.30;

  private static final double ALIKE = 8;

  /**
   * From there to here, and of a part from half of it on, more and more is asked for, up to what
   * only the right words reach; above it nothing is judged. Pieces often have sollus in common: a
   * piece said to another one's guide has up to 60 by them. Of a thousand made takes with a fault
   * of one kind two have more trouble than 0.32.
   */
  private static final double MOST_TROUBLE = 0.5;

  private static final double MOST_ALIKE = 90;

  /** Of fewer sollus one slip is already a great share, and likeness is known badly. */
  private static final int LEAST_SOLLUS_FOR_MOST = 21;

  private static final double SOME_TROUBLE_OF_PART = 0.15;

  /** A restart is as much trouble as so many sollus missed. */
  private static final int RESTART = 4;

  private DoubtMeasure() {}

  /**
   * What can be said before a pulse is looked for.
   *
   * @param alignment what was heard
   * @param curve the recording
   * @return a reason not to go on
   */
  static Optional<Doubt> before(Alignment alignment, OnsetCurve curve) {
    if (alignment.expected().size() < SaidSollus.LEAST) {
      return Optional.of(new Doubt("the score asks for fewer than 4 sollus"));
    }
    if (curve.isSilent()) {
      return Optional.of(new Doubt("the recording is silent"));
    }
    if (alignment.onsets().isEmpty()) {
      return Optional.of(new Doubt("nothing begins in the recording"));
    }
    int need = Math.min(LEAST_SOLLUS, alignment.expected().size());
    if (alignment.said().size() < need) {
      int heard = alignment.said().size();
      return Optional.of(
          new Doubt(
              "only "
                  + (heard == 1 ? "1 sollu of the score was" : heard + " sollus of the score were")
                  + " recognised in it"));
    }
    return Optional.empty();
  }

  /**
   * What can be said once the pulse is known.
   *
   * @param alignment what was heard
   * @param said the same against the pulse
   * @param habits what of it was said in a bad habit; at the old speed it keeps no pulse
   * @param levels the recording
   * @param claps the hand, whose sounds are no trouble
   * @return a reason not to trust the findings
   */
  static Optional<Doubt> after(
      Alignment alignment,
      SaidSollus said,
      List<HabitFound> habits,
      SoundLevels levels,
      Optional<HeardClaps> claps) {
    List<ExpectedSollu> expected = alignment.expected();
    int first = said.sollus().stream().mapToInt(SaidSollu::place).min().orElse(0);
    int last = said.sollus().stream().mapToInt(SaidSollu::place).max().orElse(0);
    long heard = said.sollus().stream().mapToInt(SaidSollu::place).distinct().count();
    double share = heard / (last - first + 1.0);
    if (share < LEAST_MATCHED) {
      return Optional.of(
          new Doubt(
              "only "
                  + Math.round(100 * share)
                  + " of 100 sollus could be matched; it may be another piece"));
    }
    double trouble =
        (last
                - first
                + 1
                - heard
                + addedInside(alignment, claps)
                + RESTART * (said.line().runs() - 1))
            / (last - first + 1.0);
    boolean isLong = heard >= LEAST_SOLLUS_FOR_MOST;
    if (isLong && trouble > MOST_TROUBLE) {
      return Optional.of(
          new Doubt("too much of it is not as the score has it; it may be another piece"));
    }
    boolean isPart = alignment.recorded().size() < expected.size();
    if (trouble > (isPart ? LEAST_TROUBLE_OF_PART : LEAST_TROUBLE)
        && SolluLikeness.of(alignment, levels) < leastLikeness(trouble, isPart, isLong)) {
      return Optional.of(
          new Doubt("what was said does not sound like its sollus; it may be another piece"));
    }
    if (alignment.recorded().from() > 0 && alignment.recorded().to() < expected.size()) {
      double alike = SolluLikeness.of(alignment, levels);
      if (alike != SolluLikeness.UNKNOWN && alike < ALIKE) {
        return Optional.of(
            new Doubt("its sounds are not those of the place in the score that their times fit"));
      }
    }
    double[] matras = fromPulse(expected, said, HabitFound.atOldSpeed(habits));
    return matras.length > 0 && RobustStatistics.spreadAroundZero(matras) > LOOSEST_MATRAS
        ? Optional.of(
            new Doubt("the sounds keep no common pulse with the score; it may be another piece"))
        : Optional.empty();
  }

  /** How alike sounds of one sollu have to be where so much is not as the score has it. */
  static double leastLikeness(double trouble, boolean isPart, boolean isLong) {
    double much = isPart ? SOME_TROUBLE_OF_PART : MUCH_TROUBLE;
    if (trouble <= much) {
      return isPart ? ALIKE : ALIKE * trouble / much;
    }
    if (!isLong) {
      return ALIKE;
    }
    return ALIKE + (MOST_ALIKE - ALIKE) * (trouble - much) / (MOST_TROUBLE - much);
  }

  /**
   * How far each sollu is from the pulse, in matras, without the rounds at the old speed; as these
   * displace all that follows, what is said after one is held against its own median.
   */
  private static double[] fromPulse(
      List<ExpectedSollu> expected, SaidSollus said, Set<Integer> old) {
    Map<Long, List<Double>> byOldBefore = new TreeMap<>();
    for (SaidSollu each : said.sollus()) {
      ExpectedSollu asked = expected.get(each.place());
      if (!old.contains(asked.round())) {
        long before = old.stream().filter(round -> round < asked.round()).count();
        double beat = said.line().beatSeconds(asked.beat().toDouble());
        byOldBefore
            .computeIfAbsent(before, b -> new ArrayList<>())
            .add(each.deviationSeconds() / beat * asked.matrasPerBeat());
      }
    }
    return byOldBefore.entrySet().stream()
        .flatMapToDouble(
            own -> {
              double[] late = own.getValue().stream().mapToDouble(Double::doubleValue).toArray();
              double all = own.getKey() == 0 ? 0 : RobustStatistics.median(late);
              return Arrays.stream(late).map(value -> value - all);
            })
        .toArray();
  }

  /** Sounds that are neither sollu nor clap, from the first sollu to the last. */
  private static long addedInside(Alignment alignment, Optional<HeardClaps> claps) {
    int first = alignment.said().get(0).onset();
    int last = alignment.said().get(alignment.said().size() - 1).onset();
    return alignment.added().stream()
        .filter(j -> j > first && j < last)
        .filter(j -> claps.isEmpty() || !claps.get().isClapped(alignment.onsets().get(j).seconds()))
        .count();
  }
}
