package org.matraloom.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.SaidSollu;
import org.matraloom.pulse.PulseFit;
import org.matraloom.pulse.PulseLine;
import org.matraloom.pulse.RobustStatistics;
import org.matraloom.time.MeasuredTempo;

/**
 * The pulse that a take has before its nadai changes, carried on: what the reciter has to go by
 * when the matras quicken. What is said after the change is not asked.
 *
 * @param line the pulse before; its first run is the one in which the reciter began, or began again
 * @param change the first sollu in the new nadai, its place in the score
 * @param before what was said before it
 * @param laterBeatSeconds how long a beat is after the change, in seconds
 */
public record PulseBefore(
    PulseLine line, int change, List<SaidSollu> before, double laterBeatSeconds) {

  /** Less is no pulse to be carried on. */
  private static final int LEAST_SOLLUS = 12;

  private static final double LEAST_BEATS = 3;

  /** No growth is so many standard errors sure: the tempo is taken to be even. */
  private static final double EVEN = Double.POSITIVE_INFINITY;

  /** A pulse that wanders so far from a straight line cannot be carried on. */
  private static final double LOOSEST_SECONDS = 0.035;

  /** Where the sollus before a later change are so much farther from their pulse, it broke. */
  private static final double BROKEN = 1.6;

  /** Of fewer sollus before or after a change it is not told whether the tempo breaks there. */
  private static final int LEAST_BESIDE_BREAK = 8;

  private static final double EVEN_SECONDS = 0.012;

  /**
   * Whether the tempo grows all the while, rather than break where the nadai changes.
   *
   * @param expected the sollus of the score
   * @param sollus what was said since the reciter last began, in order of time; at least one
   * @return false if the nadai does not change, or too near an end
   */
  static boolean isDrift(List<ExpectedSollu> expected, List<SaidSollu> sollus) {
    List<SaidSollu> before = sollus.subList(0, sollus.size() - 1);
    double[] seams = seams(expected, before);
    return seams.length > 0
        && GrowthOrBreak.isGrowth(GrowthOrBreak.shapes(expected, before, seams));
  }

  /**
   * Whether the tempo breaks where the nadai changes, rather than grow all the while.
   *
   * @param expected the sollus of the score
   * @param sollus what was said since the reciter last began, in order of time; at least one
   * @return false if the nadai does not change, or too near an end
   */
  static boolean breaks(List<ExpectedSollu> expected, List<SaidSollu> sollus) {
    List<SaidSollu> before = sollus.subList(0, sollus.size() - 1);
    double[] seams = seams(expected, before);
    return seams.length > 0 && GrowthOrBreak.isBreak(GrowthOrBreak.shapes(expected, before, seams));
  }

  /**
   * The beats at which the nadai changes, with enough said before and after to tell whether the
   * tempo breaks there.
   *
   * @param expected the sollus of the score
   * @param sollus what was said
   * @return beats, ascending
   */
  static double[] seams(List<ExpectedSollu> expected, List<SaidSollu> sollus) {
    return IntStream.range(1, expected.size())
        .filter(k -> expected.get(k).matrasPerBeat() != expected.get(k - 1).matrasPerBeat())
        .filter(k -> count(sollus, said -> said.place() < k) >= LEAST_BESIDE_BREAK)
        .filter(k -> count(sollus, said -> said.place() >= k) >= LEAST_BESIDE_BREAK)
        .mapToDouble(k -> expected.get(k).beat().toDouble())
        .toArray();
  }

  /**
   * The pulse before the last change up to which it holds.
   *
   * @param expected the sollus of the score
   * @param sollus what was said since the reciter last began, in order of time
   * @return empty if the nadai does not change, or too soon
   */
  static Optional<PulseBefore> of(List<ExpectedSollu> expected, List<SaidSollu> sollus) {
    List<PulseBefore> found = new ArrayList<>();
    for (int k = 1; k < expected.size(); k++) {
      if (expected.get(k).matrasPerBeat() != expected.get(k - 1).matrasPerBeat()) {
        at(k, expected, sollus).ifPresent(found::add);
      }
    }
    found.removeIf(each -> each.spreadSeconds(expected) > LOOSEST_SECONDS);
    if (found.isEmpty() || isDrift(expected, sollus)) {
      return Optional.empty();
    }
    double usual = Math.max(EVEN_SECONDS, found.get(0).spreadSeconds(expected));
    int last = found.size() - 1;
    while (last > 0 && found.get(last).spreadSeconds(expected) > BROKEN * usual) {
      last--;
    }
    return Optional.of(found.get(last));
  }

  private static Optional<PulseBefore> at(
      int change, List<ExpectedSollu> expected, List<SaidSollu> sollus) {
    List<SaidSollu> before = sollus.stream().filter(said -> said.place() < change).toList();
    List<SaidSollu> after = sollus.stream().filter(said -> said.place() >= change).toList();
    if (before.size() < LEAST_SOLLUS || after.isEmpty()) {
      return Optional.empty();
    }
    double[] beat = beats(expected, before);
    if (beat[beat.length - 1] - beat[0] < LEAST_BEATS) {
      return Optional.empty();
    }
    int firstRun = before.get(0).run();
    PulseLine line =
        new PulseFit(
                beat,
                before.stream().mapToDouble(SaidSollu::feltSeconds).toArray(),
                before.stream().mapToInt(said -> said.run() - firstRun + 1).toArray())
            .line(EVEN);
    double seam = expected.get(change).beat().toDouble();
    double later = RoundMeasure.beatsPerMinute(expected, after);
    return Optional.of(
        new PulseBefore(
            line,
            change,
            before,
            later > 0 ? new MeasuredTempo(later).beatSeconds() : line.beatSeconds(seam)));
  }

  /** When a beat is due. */
  double secondsAt(double beat) {
    return line.secondsAt(beat, 1);
  }

  /**
   * How long a beat is right before the change.
   *
   * @param expected the sollus of the score
   * @return seconds
   */
  public double beatSeconds(List<ExpectedSollu> expected) {
    return line.beatSeconds(expected.get(change).beat().toDouble());
  }

  private static long count(List<SaidSollu> sollus, Predicate<SaidSollu> which) {
    return sollus.stream().filter(which).count();
  }

  private double spreadSeconds(List<ExpectedSollu> expected) {
    double[] beat = beats(expected, before);
    int firstRun = before.get(0).run();
    return RobustStatistics.spreadAroundZero(
        IntStream.range(0, beat.length)
            .mapToDouble(
                i ->
                    before.get(i).feltSeconds()
                        - line.secondsAt(beat[i], before.get(i).run() - firstRun + 1))
            .toArray());
  }

  private static double[] beats(List<ExpectedSollu> expected, List<SaidSollu> sollus) {
    return sollus.stream().mapToDouble(s -> expected.get(s.place()).beat().toDouble()).toArray();
  }
}
