package org.matraloom.session;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.matraloom.follow.ExpectedSollu;
import org.matraloom.follow.FeltBeat;
import org.matraloom.onset.Onset;
import org.matraloom.pulse.RobustStatistics;
import org.matraloom.schedule.Timeline;
import org.matraloom.score.Lexicon;
import org.matraloom.time.FrameClock;
import org.matraloom.time.Ratio;

/**
 * Which sollu was said how early or late, as far as that can be told while it is said: each sound
 * belongs to the sollu whose time is nearest, and of two for one sollu the nearer counts.
 *
 * <p>Consonants have their usual lag ({@link FeltBeat}). Where the delay of the devices was never
 * measured, lateness is counted from the usual lateness of the last sollus.
 */
final class SaidMarks {

  /** Nothing farther from its sollu than this belongs to it. */
  private static final double REACH_SECONDS = 0.25;

  /** The usual lateness is that of so many sollus; with fewer than the least it is not known. */
  private static final int USUAL_OF = 15;

  private static final int USUAL_LEAST = 4;

  /** So many sollus are looked at to tell whether one ends with the guide. */
  private static final int LAST_OF = 8;

  /** With the guide is who is no farther from it than this, in the middle of these sollus. */
  private static final double WITH_SECONDS = 0.020;

  private final List<ExpectedSollu> expected;
  private final TreeMap<Double, Integer> byOnset = new TreeMap<>();
  private final double[] onsetSeconds;
  private final TreeMap<Integer, SaidMark> marks = new TreeMap<>();
  private final Deque<Double> lately = new ArrayDeque<>();
  private final boolean knowsDelay;
  private final int ratePerSecond;

  /**
   * Nothing was said yet.
   *
   * @param timeline what is to be said
   * @param lexicon how it is said
   * @param knowsDelay whether the delay of the devices was measured
   * @param ratePerSecond frames captured a second
   */
  SaidMarks(Timeline timeline, Lexicon lexicon, boolean knowsDelay, int ratePerSecond) {
    this.expected = ExpectedSollu.of(timeline);
    this.knowsDelay = knowsDelay;
    this.ratePerSecond = ratePerSecond;
    this.onsetSeconds = new double[expected.size()];
    for (int k = 0; k < onsetSeconds.length; k++) {
      double felt = timeline.secondsAt(expected.get(k).beat()).toDouble();
      onsetSeconds[k] = felt - FeltBeat.of(expected.get(k).sollu(), lexicon).usualLagSeconds();
      byOnset.put(onsetSeconds[k], k);
    }
  }

  /**
   * Takes a sound.
   *
   * @param onset when it was heard
   * @param startFrame the captured frame at which the guide's first beat falls
   * @return the mark that it makes, or moves; empty if it belongs to no sollu
   */
  Optional<SaidMark> hear(Onset onset, long startFrame) {
    double at = onset.seconds() - FrameClock.seconds(startFrame, ratePerSecond);
    double usual = knowsDelay || lately.size() < USUAL_LEAST ? 0 : median();
    Optional<Integer> place = nearest(at - usual);
    if (place.isEmpty()) {
      return Optional.empty();
    }
    int k = place.get();
    double late = at - onsetSeconds[k];
    if (marks.containsKey(k) && Math.abs(marks.get(k).lateSeconds()) <= Math.abs(late - usual)) {
      return Optional.empty();
    }
    lately.addLast(late);
    if (lately.size() > USUAL_OF) {
      lately.removeFirst();
    }
    long frame = Math.round(onset.seconds() * ratePerSecond);
    ExpectedSollu asked = expected.get(k);
    SaidMark mark = new SaidMark(k, asked.sollu(), asked.beat(), frame, late - usual);
    marks.put(k, mark);
    return Optional.of(mark);
  }

  private double median() {
    return RobustStatistics.median(lately.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private Optional<Integer> nearest(double seconds) {
    return Optional.ofNullable(nearer(seconds))
        .filter(key -> Math.abs(key - seconds) <= REACH_SECONDS)
        .map(byOnset::get);
  }

  private Double nearer(double seconds) {
    Double before = byOnset.floorKey(seconds);
    Double after = byOnset.ceilingKey(seconds);
    if (before == null || after == null) {
      return before == null ? after : before;
    }
    return seconds - before <= after - seconds ? before : after;
  }

  /** Whether the last sollus were said, and said with the guide: then nothing more is to come. */
  boolean endWithTheGuide() {
    int last = expected.size() - 1;
    return marks.containsKey(last)
        && RobustStatistics.median(
                marks.tailMap(last - LAST_OF + 1).values().stream()
                    .mapToDouble(mark -> Math.abs(mark.lateSeconds()))
                    .toArray())
            <= WITH_SECONDS;
  }

  /** How many sollus are asked for. */
  int count() {
    return expected.size();
  }

  /** The marks of one beat, in order. */
  List<SaidMark> ofBeat(long beat) {
    Ratio from = Ratio.of(beat);
    return marks.values().stream()
        .filter(mark -> mark.beat().compareTo(from) >= 0)
        .filter(mark -> mark.beat().compareTo(from.plus(Ratio.ONE)) < 0)
        .toList();
  }
}
