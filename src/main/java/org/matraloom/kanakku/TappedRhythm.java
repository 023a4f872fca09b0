package org.matraloom.kanakku;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.matraloom.time.MeasuredTempo;
import org.matraloom.time.Ratio;

/**
 * A rhythm that somebody tapped against the clap, in matras.
 *
 * <p>Each tap is rounded from its own place in the beats, never from the tap before. Of the nadais
 * that is taken which explains the taps best: a tap lies about 20 ms beside its matra (musicians'
 * taps scatter by 10 to 30 ms: B. H. Repp, "Sensorimotor synchronization", Psychonomic Bulletin and
 * Review 12, 2005), half of all taps fall on a beat, and the others on any matra of it alike. All
 * taps may be early or late together, as people tap ahead of the beat (the same source) and devices
 * lag.
 *
 * @param matrasPerBeat the nadai that fits best
 * @param startBeat the matra of the first tap, in beats of the clap
 * @param lengths from each tap to the next, in matras; the last is 1, for nothing tells its end
 * @param scatterSeconds how far the taps lie from their matras, as the root of the mean square,
 *     without what they have in common
 */
public record TappedRhythm(
    int matrasPerBeat, Ratio startBeat, List<Integer> lengths, double scatterSeconds) {

  /** The fewest taps that make a rhythm. */
  public static final int FEWEST = 2;

  /** The most taps that are taken. */
  public static final int MOST = 400;

  private static final List<Integer> NADAIS = List.of(4, 3, 5, 7, 9, 6, 8);
  private static final double USUAL_SCATTER_SECONDS = 0.020;
  private static final double LONGEST_SHIFT_SECONDS = 0.080;
  private static final double LEAST_GAIN = 1e-6;

  /** Copies the list. */
  public TappedRhythm {
    lengths = List.copyOf(lengths);
  }

  /**
   * Finds the matras of taps.
   *
   * @param tapBeats where the taps fell, in beats of the clap that was heard, ascending
   * @param tempo the tempo of the clap
   * @param usualNadai the matras a beat that are taken where others fit no better
   * @return nothing if two taps fall on one matra in every nadai
   * @throws IllegalArgumentException if there are too few or too many taps, or they go back
   */
  public static Optional<TappedRhythm> of(
      List<Double> tapBeats, MeasuredTempo tempo, int usualNadai) {
    check(tapBeats);
    Set<Integer> nadais = new LinkedHashSet<>(List.of(usualNadai));
    nadais.addAll(NADAIS);
    Optional<TappedRhythm> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (int nadai : nadais) {
      double shift = shift(tapBeats, nadai, LONGEST_SHIFT_SECONDS / tempo.beatSeconds());
      long[] matras = new long[tapBeats.size()];
      double squares = 0;
      double surprise = 0;
      for (int tap = 0; tap < matras.length; tap++) {
        double place = (tapBeats.get(tap) - shift) * nadai;
        matras[tap] = (long) Math.rint(place);
        double off = tempo.secondsOf((place - matras[tap]) / nadai);
        squares += off * off;
        surprise += matras[tap] % nadai == 0 ? Math.log(2) : Math.log(2.0 * (nadai - 1));
      }
      surprise += squares / (2 * USUAL_SCATTER_SECONDS * USUAL_SCATTER_SECONDS);
      if (ascends(matras) && surprise < least - LEAST_GAIN) {
        least = surprise;
        best = Optional.of(rhythm(matras, nadai, Math.sqrt(squares / matras.length)));
      }
    }
    return best;
  }

  private static void check(List<Double> taps) {
    if (taps.size() < FEWEST || taps.size() > MOST) {
      throw new IllegalArgumentException(
          "a rhythm has " + FEWEST + " to " + MOST + " taps, given " + taps.size());
    }
    for (int tap = 1; tap < taps.size(); tap++) {
      if (!(taps.get(tap) > taps.get(tap - 1))) {
        throw new IllegalArgumentException("each tap is later than the one before");
      }
    }
  }

  /** What all taps have in common: the mean of their phases on the circle of a matra, in beats. */
  private static double shift(List<Double> taps, int nadai, double longestBeats) {
    double sine = 0;
    double cosine = 0;
    for (double tap : taps) {
      double angle = 2 * Math.PI * (tap * nadai - Math.floor(tap * nadai));
      sine += Math.sin(angle);
      cosine += Math.cos(angle);
    }
    double shift = Math.atan2(sine, cosine) / (2 * Math.PI) / nadai;
    return Math.max(-longestBeats, Math.min(longestBeats, shift));
  }

  private static boolean ascends(long[] matras) {
    for (int tap = 1; tap < matras.length; tap++) {
      if (matras[tap] <= matras[tap - 1]) {
        return false;
      }
    }
    return true;
  }

  private static TappedRhythm rhythm(long[] matras, int nadai, double scatterSeconds) {
    List<Integer> lengths = new ArrayList<>();
    for (int tap = 1; tap < matras.length; tap++) {
      lengths.add(Math.toIntExact(matras[tap] - matras[tap - 1]));
    }
    lengths.add(1);
    return new TappedRhythm(nadai, Ratio.of(matras[0], nadai), lengths, scatterSeconds);
  }

  /**
   * How long it is.
   *
   * @return matras
   */
  public int matras() {
    return lengths.stream().mapToInt(Integer::intValue).sum();
  }
}
