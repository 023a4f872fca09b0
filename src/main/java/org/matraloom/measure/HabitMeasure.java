package org.matraloom.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.HabitLayouts;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseLine;
import org.matraloom.pulse.RobustStatistics;

/**
 * Looks for the habits of saying five (or more) to a beat: {@link HabitFound}.
 *
 * <p>In every beat of a round the deviations of its sollus are laid against what each habit would
 * make of them, both about their means, so that a beat that is late as a whole does not count. The
 * least-squares multiple of the habit is its amount in that beat. The beat has the habit if the
 * amount is {@value #LEAST_AMOUNT} to {@value #MOST_AMOUNT} and explains {@value #LEAST_IN_ONE} of
 * the beat's unevenness. The round has it if {@value #LEAST_BEATS} beats have it, and {@value
 * #LEAST_SHARE} of those that could be measured, and if that explains {@value #LEAST_EXPLAINED} of
 * all unevenness in the round; of several habits the one that explains most is named.
 *
 * <p>With sollus that vary by 8 ms, at 80 beats a minute, the amount in a beat varies by 0.10 to
 * 0.15, so that an even beat seems to have a habit less than once in a thousand.
 */
final class HabitMeasure {

  private static final double LEAST_AMOUNT = 0.5;
  private static final double MOST_AMOUNT = 1.6;

  /** Less of the old speed is a speed of its own: a new nadai that is slow. */
  private static final double LEAST_OF_OLD_SPEED = 0.75;

  private static final double LEAST_IN_ONE = 0.6;
  private static final int LEAST_BEATS = 2;
  private static final double LEAST_SHARE = 0.4;
  private static final double LEAST_EXPLAINED = 0.5;
  private static final int LEAST_IN_BEAT = 3;
  private static final int LEAST_NADAI = 5;

  private HabitMeasure() {}

  /** One beat of a round: matras from 0, and how late each is, in beats. */
  private record Beat(List<Integer> matras, List<Double> late) {}

  private record Trial(Habit habit, double amount, double explained, int beats, int measured) {}

  /**
   * The habits of a take.
   *
   * @param expected the sollus of the score
   * @param sollus what was said
   * @param line the pulse
   * @return by round, at most one for each
   */
  static List<HabitFound> of(List<ExpectedSollu> expected, List<SaidSollu> sollus, PulseLine line) {
    Map<Integer, Map<Long, Beat>> rounds = new TreeMap<>();
    Map<Integer, Integer> nadai = new TreeMap<>();
    for (SaidSollu said : sollus) {
      ExpectedSollu asked = expected.get(said.place());
      if (asked.matrasPerBeat() >= LEAST_NADAI && asked.matra() > 0) {
        nadai.put(asked.round(), asked.matrasPerBeat());
        Beat beat =
            rounds
                .computeIfAbsent(asked.round(), r -> new TreeMap<>())
                .computeIfAbsent(
                    asked.beat().floor() * 1_000L + said.run(),
                    b -> new Beat(new ArrayList<>(), new ArrayList<>()));
        beat.matras.add(asked.matra() - 1);
        beat.late.add(said.deviationSeconds() / line.beatSeconds(asked.beat().toDouble()));
      }
    }
    List<HabitFound> found = new ArrayList<>();
    rounds.forEach(
        (round, beats) -> {
          int old = oldSpeed(expected, round, nadai.get(round));
          best(List.copyOf(beats.values()), nadai.get(round), old)
              .ifPresent(
                  trial ->
                      found.add(
                          new HabitFound(
                              trial.habit,
                              round,
                              trial.amount,
                              Math.max(0, Math.min(1, trial.explained)),
                              trial.beats)));
        });
    return found;
  }

  /** The nadai before the one of a round; four if it is the first. */
  private static int oldSpeed(List<ExpectedSollu> expected, int round, int nadai) {
    int old = 4;
    for (ExpectedSollu each : expected) {
      if (each.round() >= round && each.matrasPerBeat() == nadai) {
        break;
      }
      old = each.matrasPerBeat();
    }
    return old;
  }

  private static Optional<Trial> best(List<Beat> beats, int nadai, int old) {
    List<Trial> trials = new ArrayList<>();
    if (old < nadai) {
      trials.add(trial(Habit.OLD_SPEED_KEPT, beats, m -> m / (double) old - even(m, nadai)));
      trials.add(
          trial(Habit.OLD_SPEED_KEPT, beats, m -> HabitLayouts.squeezed(m, old) - even(m, nadai)));
    }
    if (nadai == 5) {
      trials.add(trial(Habit.LIMPING, beats, m -> HabitLayouts.limping(m) - even(m, nadai)));
    }
    trials.add(
        trial(
            Habit.RUSHED_THEN_WAITING, beats, m -> HabitLayouts.rushed(m, nadai) - even(m, nadai)));
    return trials.stream()
        .filter(t -> t.beats >= LEAST_BEATS && t.beats >= LEAST_SHARE * t.measured)
        .filter(t -> t.explained >= LEAST_EXPLAINED)
        .filter(t -> t.habit != Habit.OLD_SPEED_KEPT || t.amount >= LEAST_OF_OLD_SPEED)
        .max((a, b) -> Double.compare(a.explained, b.explained));
  }

  private static double even(int matra, int nadai) {
    return matra / (double) nadai;
  }

  @FunctionalInterface
  private interface Shape {
    /** How late a habit makes a matra of the beat, in beats. */
    double late(int matra);
  }

  private static Trial trial(Habit habit, List<Beat> beats, Shape shape) {
    List<Double> amounts = new ArrayList<>();
    double all = 0;
    double explained = 0;
    int measured = 0;
    for (Beat beat : beats) {
      if (beat.matras.size() >= LEAST_IN_BEAT) {
        double[] asked = centred(beat.matras.stream().mapToDouble(shape::late).toArray());
        double[] is = centred(beat.late.stream().mapToDouble(Double::doubleValue).toArray());
        double amount = product(asked, is) / product(asked, asked);
        double squares = product(is, is);
        double gain = amount * product(asked, is);
        measured++;
        all += squares;
        if (amount >= LEAST_AMOUNT && amount <= MOST_AMOUNT && gain >= LEAST_IN_ONE * squares) {
          amounts.add(amount);
          explained += gain;
        }
      }
    }
    double amount =
        RobustStatistics.median(amounts.stream().mapToDouble(Double::doubleValue).toArray());
    return new Trial(habit, amount, all == 0 ? 0 : explained / all, amounts.size(), measured);
  }

  private static double[] centred(double[] values) {
    double mean = Arrays.stream(values).average().orElse(0);
    return Arrays.stream(values).map(v -> v - mean).toArray();
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
