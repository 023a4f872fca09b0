package org.matraloom.measure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.matraloom.follow.Alignment;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.RobustStatistics;
import org.matraloom.score.Span;
import org.matraloom.time.MeasuredTempo;

/** Measures the rounds of a take: {@link RoundFindings}. */
final class RoundMeasure {

  /** Tempo is taken from sollus that the score puts so many beats apart. */
  private static final double LEAST_BEATS = 0.9;

  private static final double MOST_BEATS = 4;

  private RoundMeasure() {}

  /**
   * All rounds of the score.
   *
   * @param rounds what was to be said
   * @param alignment what was heard
   * @param sollus the same with the felt beats, in order of time
   * @return in order
   */
  static List<RoundFindings> of(
      List<Span.Round> rounds, Alignment alignment, List<SaidSollu> sollus) {
    List<ExpectedSollu> expected = alignment.expected();
    Map<Integer, Integer> asked = counts(expected, ExpectedSollu::round);
    Map<Integer, Integer> missed = counts(alignment.missed(), k -> expected.get(k).round());
    Map<Integer, Integer> unrecorded =
        counts(
            IntStream.range(0, expected.size())
                .filter(k -> !alignment.recorded().holds(k))
                .boxed()
                .toList(),
            k -> expected.get(k).round());
    Map<Integer, Integer> added = added(alignment, sollus);
    Map<Integer, List<SaidSollu>> said =
        sollus.stream().collect(Collectors.groupingBy(s -> expected.get(s.place()).round()));
    List<RoundFindings> findings = new ArrayList<>();
    for (Span.Round round : rounds) {
      int number = round.number();
      List<SaidSollu> heard = said.getOrDefault(number, List.of());
      findings.add(
          new RoundFindings(
              number,
              round.phrase(),
              round.matrasPerBeat(),
              asked.getOrDefault(number, 0),
              unrecorded.getOrDefault(number, 0),
              missed.getOrDefault(number, 0),
              added.getOrDefault(number, 0),
              beatsPerMinute(expected, heard),
              RobustStatistics.spreadAroundZero(
                  heard.stream().mapToDouble(SaidSollu::deviationSeconds).toArray())));
    }
    return findings;
  }

  /**
   * The tempo of the beat: the median over pairs of sollus about 1 to 4 beats apart of the time
   * taken for the beats asked (after P. K. Sen, J. Am. Stat. Assoc. 63 (1968) 1379-1389).
   *
   * @param expected the sollus of the score
   * @param said some of them as they were said, in order of time
   * @return beats a minute; 0 if there is no such pair
   */
  static double beatsPerMinute(List<ExpectedSollu> expected, List<SaidSollu> said) {
    List<Double> secondsPerBeat = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      SaidSollu first = said.get(i);
      double from = expected.get(first.place()).beat().toDouble();
      for (int j = i + 1; j < said.size() && said.get(j).run() == first.run(); j++) {
        double beats = expected.get(said.get(j).place()).beat().toDouble() - from;
        if (beats > MOST_BEATS) {
          break;
        }
        if (beats >= LEAST_BEATS) {
          secondsPerBeat.add((said.get(j).feltSeconds() - first.feltSeconds()) / beats);
        }
      }
    }
    double seconds =
        RobustStatistics.median(secondsPerBeat.stream().mapToDouble(Double::doubleValue).toArray());
    return seconds > 0 ? MeasuredTempo.ofBeat(seconds).beatsPerMinute() : 0;
  }

  /** A sound belongs to the round of the sollu before it; before all and after all to none. */
  private static Map<Integer, Integer> added(Alignment alignment, List<SaidSollu> sollus) {
    Map<Integer, Integer> counts = new HashMap<>();
    int next = 0;
    for (int onset : alignment.added()) {
      double at = alignment.onsets().get(onset).seconds();
      while (next < sollus.size() && sollus.get(next).onsetSeconds() <= at) {
        next++;
      }
      if (next > 0 && next < sollus.size()) {
        int place = sollus.get(next - 1).place();
        counts.merge(alignment.expected().get(place).round(), 1, Integer::sum);
      }
    }
    return counts;
  }

  private static <T> Map<Integer, Integer> counts(List<T> items, Function<T, Integer> round) {
    return items.stream().collect(Collectors.groupingBy(round, Collectors.summingInt(item -> 1)));
  }
}
