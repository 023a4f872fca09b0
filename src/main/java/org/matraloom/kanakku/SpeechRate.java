package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.matraloom.score.Performance;
import org.matraloom.score.Span;
import org.matraloom.score.Spoken;
import org.matraloom.time.Ratio;

/**
 * How many sollus a second a round asks for.
 *
 * <p>For comparison: 106 untrained young adults said pa-ta-ka at most 6.57 syllables a second on
 * average, standard deviation 0.84 (norms of oral diadochokinesis, Jordan, 2022); 8 to 10 a second
 * is the limit of hearing single events in a grid (Repp 2006, Advances in Cognitive Psychology
 * 2:163).
 *
 * @param matrasPerBeat matras a beat, kalam included
 * @param matrasPerSecond the plain rate: one sollu a matra
 * @param fastestPerSecond the rate of the quickest own parts of sollus, double speed included
 */
public record SpeechRate(int matrasPerBeat, double matrasPerSecond, double fastestPerSecond) {

  /** Above this rate, in sollus a second, a passage is called hard to say. */
  public static final double HARD_PER_SECOND = 8;

  /** Above this rate, in sollus a second, only trained alternation of the tongue keeps up. */
  public static final double VERY_HARD_PER_SECOND = 12;

  private record Kind(String phrase, int nadai, int kalam) {}

  /**
   * The rates of a performance at its tempo, one for each number of matras a beat.
   *
   * @param performance what is performed
   * @return rates in the order in which they first occur
   */
  public static List<SpeechRate> of(Performance performance) {
    Ratio beatsPerSecond = performance.composition().tempo().beatsIn(Ratio.ONE);
    Map<Kind, Ratio> known = new HashMap<>();
    Map<Integer, Ratio> shortest = new LinkedHashMap<>();
    for (Span.Round round : performance.rounds()) {
      Ratio beats =
          known.computeIfAbsent(
              new Kind(round.phrase(), round.nadai(), round.kalam()),
              kind -> shortestSollu(round, performance));
      shortest.merge(round.matrasPerBeat(), beats, (a, b) -> a.compareTo(b) < 0 ? a : b);
    }
    List<SpeechRate> rates = new ArrayList<>();
    shortest.forEach(
        (density, beats) ->
            rates.add(
                new SpeechRate(
                    density,
                    beatsPerSecond.times(density).toDouble(),
                    beatsPerSecond.dividedBy(beats).toDouble())));
    return List.copyOf(rates);
  }

  private static Ratio shortestSollu(Span.Round round, Performance performance) {
    return performance
        .onlyRounds(round.number(), round.number())
        .spoken()
        .map(Spoken::ownBeats)
        .reduce(round.beats(), Ratio::min);
  }
}
