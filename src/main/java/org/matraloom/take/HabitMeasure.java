package org.matraloom.take;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Looks for the habits of saying five (or more) to a beat: {@link HabitFound}.
 *
 * <p>In every beat of a round the deviations of its sollus are laid against what each habit would
 * make of them, both about their means, so that a beat that is late as a whole does not count. The
 * least-squares multiple of the habit is its amount in that beat; the amount in the round is the
 * median over beats. A habit is named if that amount is at least {@value #LEAST_AMOUNT}, if it is
 * {@value #LEAST_SIGMAS} times as large as its own uncertainty (the spread over beats by the root
 * of their number), and if it explains most of the unevenness and more than any other.
 */
final class HabitMeasure {

  private static final double LEAST_AMOUNT = 0.5;
  private static final double MOST_AMOUNT = 1.7;
  private static final double LEAST_SIGMAS = 5;
  private static final double LEAST_EXPLAINED = 0.5;
  private static final int LEAST_BEATS = 3;
  private static final int LEAST_IN_BEAT = 3;
  private static final int LEAST_NADAI = 5;

  /** The efficiency of a median is less than a mean's, so it is this much less sure. */
  private static final double MEDIAN_UNSURE = 1.2533;

  private HabitMeasure() {}

  /** One beat of a round: matras from 0, and how late each is, in beats. */
  private record Beat(List<Integer> matras, List<Double> late) {}

  private record Trial(Habit habit, double amount, double sigmas, double explained, int beats) {}

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
      trials.add(
          trial(Habit.OLD_SPEED_KEPT, beats, matra -> matra / (double) old - even(matra, nadai)));
    }
    if (nadai == 5) {
      trials.add(trial(Habit.LIMPING, beats, matra -> Ways.limping(matra) - even(matra, nadai)));
    }
    trials.add(
        trial(
            Habit.RUSHED_THEN_WAITING,
            beats,
            matra -> Ways.rushed(matra, nadai) - even(matra, nadai)));
    return trials.stream()
        .filter(t -> t.beats >= LEAST_BEATS)
        .filter(t -> t.amount >= LEAST_AMOUNT && t.amount <= MOST_AMOUNT)
        .filter(t -> t.sigmas >= LEAST_SIGMAS && t.explained >= LEAST_EXPLAINED)
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
    for (Beat beat : beats) {
      if (beat.matras.size() >= LEAST_IN_BEAT) {
        double[] asked = centred(beat.matras.stream().mapToDouble(shape::late).toArray());
        double[] is = centred(beat.late.stream().mapToDouble(Double::doubleValue).toArray());
        amounts.add(product(asked, is) / product(asked, asked));
      }
    }
    double[] each = amounts.stream().mapToDouble(Double::doubleValue).toArray();
    double amount = Robust.median(each);
    double unsure =
        Math.max(0.02, MEDIAN_UNSURE * Robust.spread(each) / Math.sqrt(Math.max(1, each.length)));
    double all = 0;
    double left = 0;
    for (Beat beat : beats) {
      double[] asked = centred(beat.matras.stream().mapToDouble(shape::late).toArray());
      double[] is = centred(beat.late.stream().mapToDouble(Double::doubleValue).toArray());
      all += product(is, is);
      for (int i = 0; i < is.length; i++) {
        is[i] -= amount * asked[i];
      }
      left += product(is, is);
    }
    double explained = all == 0 ? 0 : 1 - left / all;
    return new Trial(habit, amount, amount / unsure, explained, each.length);
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
