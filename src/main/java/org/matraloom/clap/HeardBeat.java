package org.matraloom.clap;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.matraloom.onset.Onset;
import org.matraloom.onset.OnsetCurve;

/**
 * The beat heard in a recording beside the voice: claps, clicks, ticks.
 *
 * @param gridSeconds when each place of the beat, or of its ticks, falls, ascending
 * @param zero which of them is the beat near the moment that was asked about
 * @param ticks how many of them there are in a beat
 * @param known for each of them whether claps around it tell where it falls
 * @param claps the onsets that are claps and no sollus, by their places among the onsets
 * @param spreadSeconds how far claps are off it, as a standard deviation
 */
public record HeardBeat(
    List<Double> gridSeconds,
    int zero,
    int ticks,
    List<Boolean> known,
    Set<Integer> claps,
    double spreadSeconds) {

  /** With fewer sollus nothing is known of the voice. */
  private static final int LEAST_SOLLUS = 8;

  /** An attack counts if the ear for sollus hears something there that is no sollu. */
  private static final double SAME_SECONDS = 0.025;

  /** How far a clap may be off the beat, in spreads, and at least in seconds. */
  private static final double MOST_SPREADS = 3;

  private static final double LEAST_OFF_SECONDS = 0.015;

  /** Copies the lists. */
  public HeardBeat {
    gridSeconds = List.copyOf(gridSeconds);
    known = List.copyOf(known);
    claps = Set.copyOf(claps);
  }

  /**
   * Looks for a beat.
   *
   * @param curve what was heard
   * @param onsets all onsets in order of time, unsure ones too
   * @param paired the places among them of those that are sollus, so far as known
   * @param beatSeconds about how long a beat is by the voice, within 5 %
   * @param beatAtSeconds about where one beat of the voice falls, within 50 ms, near the beginning
   * @return empty if there is no steady beat of claps to be sure of
   */
  public static Optional<HeardBeat> of(
      OnsetCurve curve,
      List<Onset> onsets,
      Set<Integer> paired,
      double beatSeconds,
      double beatAtSeconds) {
    if (paired.size() < LEAST_SOLLUS) {
      return Optional.empty();
    }
    double[] sollus = seconds(onsets, paired, true);
    double[] others = seconds(onsets, paired, false);
    List<Attack> all = new Attacks(curve.levels().energies()).all();
    List<Attack> attacks = near(all, others);
    ClapEvidence evidence = new ClapEvidence(attacks, sollus, beatSeconds, curve.lengthSeconds());
    return new ClapSearch(evidence, beatSeconds, beatAtSeconds)
        .best()
        .filter(found -> isOfItsOwn(found.track(), attacks, near(all, sollus)))
        .map(found -> of(ClapGrid.of(found, evidence), onsets, paired));
  }

  private static List<Attack> near(List<Attack> attacks, double[] seconds) {
    return attacks.stream().filter(attack -> isNear(seconds, attack.seconds())).toList();
  }

  private static boolean isOfItsOwn(ClapTrack track, List<Attack> attacks, List<Attack> sollus) {
    Set<Double> seconds =
        track.claps().stream().map(ClapTrack.Clap::seconds).collect(Collectors.toSet());
    List<Attack> claps =
        attacks.stream().filter(attack -> seconds.contains(attack.seconds())).toList();
    return ClapLikeness.isOfItsOwn(claps, sollus);
  }

  private static HeardBeat of(ClapGrid grid, List<Onset> onsets, Set<Integer> paired) {
    List<Double> seconds = grid.seconds();
    double most = Math.max(LEAST_OFF_SECONDS, MOST_SPREADS * grid.spreadSeconds());
    HeardBeat beat =
        new HeardBeat(
            seconds, grid.zero(), grid.ticks(), grid.known(), Set.of(), grid.spreadSeconds());
    Set<Integer> claps =
        IntStream.range(0, onsets.size())
            .filter(j -> !paired.contains(j))
            .filter(j -> beat.isKnownAt(onsets.get(j).seconds()))
            .filter(j -> Math.abs(beat.offSeconds(onsets.get(j).seconds())) <= most)
            .boxed()
            .collect(Collectors.toCollection(TreeSet::new));
    return new HeardBeat(seconds, beat.zero, beat.ticks, beat.known, claps, beat.spreadSeconds);
  }

  private static double[] seconds(List<Onset> onsets, Set<Integer> paired, boolean sollus) {
    return IntStream.range(0, onsets.size())
        .filter(j -> paired.contains(j) == sollus)
        .mapToDouble(j -> onsets.get(j).seconds())
        .toArray();
  }

  private static boolean isNear(double[] sorted, double seconds) {
    int found = Arrays.binarySearch(sorted, seconds - SAME_SECONDS);
    int next = found < 0 ? -found - 1 : found;
    return next < sorted.length && sorted[next] <= seconds + SAME_SECONDS;
  }

  /**
   * Where a beat fell.
   *
   * @param beats how many beats after the one near the moment that was asked about; may be negative
   *     or a fraction
   * @return seconds; carried on at the last known tempo where nothing was heard
   */
  public double secondsAt(double beats) {
    double place = beats * ticks + zero;
    int before = (int) Math.max(0, Math.min(gridSeconds.size() - 2.0, Math.floor(place)));
    double from = gridSeconds.get(before);
    return from + (place - before) * (gridSeconds.get(before + 1) - from);
  }

  /**
   * Whether claps say where the beat is at a moment, and not the tempo from before or after alone.
   *
   * @param seconds from the beginning of the recording
   * @return whether a clap is near enough
   */
  public boolean isKnownAt(double seconds) {
    int after = firstAfter(seconds);
    return (after == 0 ? isBefore(seconds) : known.get(after - 1))
        && (after == gridSeconds.size() ? isAfter(seconds) : known.get(after));
  }

  /** Half a place on from the ends still belongs to them. */
  private boolean isBefore(double seconds) {
    double first = gridSeconds.get(0);
    return first - seconds < (gridSeconds.get(1) - first) / 2;
  }

  private boolean isAfter(double seconds) {
    int last = gridSeconds.size() - 1;
    double end = gridSeconds.get(last);
    return seconds - end < (end - gridSeconds.get(last - 1)) / 2;
  }

  /** The first place after a moment; as many as there are if there is none. */
  private int firstAfter(double seconds) {
    int found = Collections.binarySearch(gridSeconds, seconds);
    return found < 0 ? -found - 1 : found + 1;
  }

  /**
   * How much later a moment is than the clap that is nearest.
   *
   * @param seconds seconds from the beginning of the recording
   * @return seconds, negative if it is earlier; infinite if there are no claps
   */
  public double offSeconds(double seconds) {
    double least = Double.POSITIVE_INFINITY;
    int next = firstAfter(seconds);
    for (int i = Math.max(0, next - 1); i <= Math.min(gridSeconds.size() - 1, next); i++) {
      double off = seconds - gridSeconds.get(i);
      least = Math.abs(off) < Math.abs(least) ? off : least;
    }
    return least;
  }
}
