package org.matraloom.follow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;
import org.matraloom.onset.SoundLevels;
import org.matraloom.pulse.RobustStatistics;

/**
 * Looks for sollus in whose place no onset was heard where the sollus around them put them: a nasal
 * that goes on from the vowel before, a soft release. What rises there counts if it is as loud as
 * such a sollu and sounds like it, and like no chance.
 */
final class FaintSollus {

  /** A sound is nearer to its sollu's place than to the next. */
  private static final double NEAR_MATRAS = 0.35;

  /** Within this of an onset it is still the same sound. */
  private static final double APART_SECONDS = 0.045;

  /** A place is known where the sollus around it keep the tempo of the take to this share. */
  private static final double SAME_TEMPO = 0.25;

  /** The sollus on both sides of a place are no farther away than this. */
  private static final int MOST_MISSED = 2;

  /** The tempo at the end is taken from so many sollus. */
  private static final int LAST_SOLLUS = 12;

  private static final double LEAST_RISE_DB = 2;
  private static final double QUIETER_DB = 9;
  private static final double LEAST_GAIN = 0.1;

  /** What is so much more like another sollu is that one's sound. */
  private static final double LIKER_OTHER = 1;

  /** The last sollu decides about the landing. */
  private static final double LEAST_GAIN_LAST = 0.6;

  /** An onset that only its place makes one. */
  static final double CONFIDENCE = 0.05;

  private final double[] expected;
  private final int[] kinds;
  private final SoundLevels levels;
  private final List<Onset> onsets;
  private final PairingSearch.Found found;

  FaintSollus(
      List<ExpectedSollu> asked,
      SoundLevels levels,
      List<Onset> onsets,
      PairingSearch.Found found) {
    this.expected = asked.stream().mapToDouble(ExpectedSollu::seconds).toArray();
    this.kinds = ExpectedSollu.kinds(asked);
    this.levels = levels;
    this.onsets = onsets;
    this.found = found;
  }

  /**
   * A pairing with onsets that were not heard at first.
   *
   * @param onsets all onsets, in order of time
   * @param said which sollu is which
   */
  record Filled(List<Onset> onsets, List<Alignment.Said> said) {}

  /** A sollu that may have been said, and the moment. */
  private record Guess(int sollu, double seconds) {}

  /** The pairing with the faint sollus that are found. */
  Filled filled() {
    List<Guess> guesses = found.lagSeconds().isEmpty() ? List.of() : guesses();
    if (guesses.isEmpty()) {
      return new Filled(onsets, found.said());
    }
    Filled all = with(guesses);
    SolluModels models = SolluModels.of(SoundColours.of(levels, all.onsets), kinds, found(all));
    List<Guess> alike =
        guesses.stream()
            .filter(guess -> models.gain(guess.sollu, onsetOf(all, guess)) >= leastGain(guess))
            .filter(guess -> models.fallsShort(guess.sollu, onsetOf(all, guess)) <= LIKER_OTHER)
            .toList();
    return with(alike);
  }

  private double leastGain(Guess guess) {
    return guess.sollu == expected.length - 1 ? LEAST_GAIN_LAST : LEAST_GAIN;
  }

  private List<Guess> guesses() {
    Map<Integer, Double> usualDb =
        found.said().stream()
            .collect(
                Collectors.groupingBy(
                    said -> kinds[said.sollu()],
                    Collectors.collectingAndThen(
                        Collectors.mapping(said -> levels.attackDb(at(said)), Collectors.toList()),
                        FaintSollus::median)));
    List<Guess> guesses = new ArrayList<>();
    List<Alignment.Said> said = found.said();
    for (int i = 1; i < said.size(); i++) {
      between(said.get(i - 1), said.get(i), usualDb, guesses);
    }
    last(usualDb).ifPresent(guesses::add);
    return guesses;
  }

  private void between(
      Alignment.Said from, Alignment.Said to, Map<Integer, Double> usual, List<Guess> guesses) {
    int missed = to.sollu() - from.sollu() - 1;
    if (missed < 1 || missed > MOST_MISSED) {
      return;
    }
    double stretch = (beat(to) - beat(from)) / (expected[to.sollu()] - expected[from.sollu()]);
    if (Math.abs(stretch / stretch() - 1) > SAME_TEMPO) {
      return;
    }
    for (int k = from.sollu() + 1; k < to.sollu(); k++) {
      double due = beat(from) + (expected[k] - expected[from.sollu()]) * stretch;
      double matra =
          stretch * Math.min(expected[k] - expected[k - 1], expected[k + 1] - expected[k]);
      guess(k, due, matra, at(from), at(to), usual).ifPresent(guesses::add);
    }
  }

  private Optional<Guess> last(Map<Integer, Double> usual) {
    int last = expected.length - 1;
    List<Alignment.Said> said = found.said();
    if (said.size() < LAST_SOLLUS || said.get(said.size() - 1).sollu() != last - 1) {
      return Optional.empty();
    }
    Alignment.Said before = said.get(said.size() - 1);
    double matra = stretch() * (expected[last] - expected[last - 1]);
    double due = beat(before) + matra;
    return guess(last, due, matra, at(before), Double.POSITIVE_INFINITY, usual);
  }

  private Optional<Guess> guess(
      int place,
      double due,
      double matra,
      double after,
      double before,
      Map<Integer, Double> usual) {
    double middle = due - found.lagSeconds().get(place);
    double from = Math.max(middle - NEAR_MATRAS * matra, after + APART_SECONDS);
    double to = Math.min(middle + NEAR_MATRAS * matra, before - APART_SECONDS);
    if (from >= to || !usual.containsKey(kinds[place])) {
      return Optional.empty();
    }
    SoundLevels.Rise rise = levels.steepestRise(from, to);
    boolean loud = levels.attackDb(rise.seconds()) > usual.get(kinds[place]) - QUIETER_DB;
    return rise.db() >= LEAST_RISE_DB && loud
        ? Optional.of(new Guess(place, rise.seconds()))
        : Optional.empty();
  }

  /** How many times as slow as the score the take is, as a rule towards its end. */
  private double stretch() {
    List<Alignment.Said> said = found.said();
    double[] slopes =
        IntStream.range(Math.max(1, said.size() - LAST_SOLLUS), said.size())
            .filter(i -> said.get(i).sollu() > said.get(i - 1).sollu())
            .mapToDouble(
                i ->
                    (beat(said.get(i)) - beat(said.get(i - 1)))
                        / (expected[said.get(i).sollu()] - expected[said.get(i - 1).sollu()]))
            .toArray();
    return slopes.length == 0 ? 1 : RobustStatistics.median(slopes);
  }

  private Filled with(List<Guess> guesses) {
    List<Onset> all = new ArrayList<>(onsets);
    guesses.forEach(guess -> all.add(onset(guess)));
    all.sort(Comparator.comparingDouble(Onset::seconds));
    Map<Onset, Integer> places = new HashMap<>();
    IntStream.range(0, all.size()).forEach(j -> places.put(all.get(j), j));
    List<Alignment.Said> said = new ArrayList<>();
    found
        .said()
        .forEach(
            each ->
                said.add(new Alignment.Said(each.sollu(), places.get(onsets.get(each.onset())))));
    guesses.forEach(guess -> said.add(new Alignment.Said(guess.sollu, places.get(onset(guess)))));
    said.sort(Comparator.comparingInt(Alignment.Said::onset));
    return new Filled(all, said);
  }

  private List<Alignment.Said> found(Filled all) {
    return all.said.stream()
        .filter(each -> all.onsets.get(each.onset()).confidence() > CONFIDENCE)
        .toList();
  }

  private static int onsetOf(Filled all, Guess guess) {
    return all.onsets.indexOf(onset(guess));
  }

  private static Onset onset(Guess guess) {
    return new Onset(guess.seconds, CONFIDENCE);
  }

  private double at(Alignment.Said said) {
    return onsets.get(said.onset()).seconds();
  }

  private double beat(Alignment.Said said) {
    return at(said) + found.lagSeconds().get(said.sollu());
  }

  private static double median(List<Double> values) {
    return RobustStatistics.median(values.stream().mapToDouble(Double::doubleValue).toArray());
  }
}
