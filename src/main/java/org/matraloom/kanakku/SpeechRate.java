package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.matraloom.score.Moment;
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
 * @param matrasPerBeat matras a beat, kalam and braces such as {5: ...} included
 * @param matrasPerSecond the plain rate: one sollu a matra
 * @param fastestPerSecond the rate of the quickest own parts of sollus, double speed included
 */
public record SpeechRate(int matrasPerBeat, double matrasPerSecond, double fastestPerSecond) {

  /** Above this rate, in sollus a second, a passage is called hard to say. */
  public static final double HARD_PER_SECOND = 8;

  /**
   * Above this rate, in sollus a second, nothing is said any more: twice the rate that is hard
   * already. A starting value without a source.
   */
  public static final double IMPOSSIBLE_PER_SECOND = 16;

  /** Above this rate, in sollus a second, only trained alternation of the tongue keeps up. */
  public static final double VERY_HARD_PER_SECOND = 12;

  /**
   * The rates of a performance at its tempo, one for each number of matras a beat.
   *
   * @param performance what is performed
   * @return rates in the order in which they first occur
   */
  public static List<SpeechRate> of(Performance performance) {
    Ratio beatsPerSecond = performance.composition().tempo().beatsIn(Ratio.ONE);
    Set<List<?>> known = new HashSet<>();
    Map<Integer, Ratio> shortest = new LinkedHashMap<>();
    for (Span.Round round : performance.rounds()) {
      if (known.add(List.of(round.phrase(), round.nadai(), round.kalam()))) {
        for (Map.Entry<Integer, Ratio> own : shortestSollus(round, performance).entrySet()) {
          shorten(shortest, own.getKey(), own.getValue());
        }
      }
    }
    List<SpeechRate> rates = new ArrayList<>();
    for (Map.Entry<Integer, Ratio> each : shortest.entrySet()) {
      rates.add(
          new SpeechRate(
              each.getKey(),
              beatsPerSecond.times(each.getKey()).toDouble(),
              beatsPerSecond.dividedBy(each.getValue()).toDouble()));
    }
    return List.copyOf(rates);
  }

  private static void shorten(Map<Integer, Ratio> shortest, int density, Ratio beats) {
    Ratio known = shortest.get(density);
    shortest.put(density, known == null ? beats : known.min(beats));
  }

  /** For each number of matras a beat the shortest own part; a silent round keeps its own. */
  private static Map<Integer, Ratio> shortestSollus(Span.Round round, Performance performance) {
    Map<Integer, Ratio> shortest = new LinkedHashMap<>();
    Iterator<Moment> moments = performance.onlyRounds(round.number(), round.number()).moments();
    while (moments.hasNext()) {
      if (moments.next() instanceof Spoken said) {
        shorten(shortest, said.matrasPerBeat(), said.ownBeats());
      }
    }
    if (shortest.isEmpty()) {
      shortest.put(round.matrasPerBeat(), round.beats());
    }
    return shortest;
  }
}
