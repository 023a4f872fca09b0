package org.matraloom.onset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Where the answer of {@link OnsetNet} peaks: the moments at which something may begin. */
final class OnsetPeaks {

  /** The answer is summed over so many steps to each side, as an onset may be spread in time. */
  private static final int SPREAD = 3;

  /** What the sum is for one certain onset: the targets of the training were so wide. */
  private static final float CERTAIN = 3;

  /**
   * A peak is the highest within so many steps: the murmur of a nasal and its release, 27 ms apart,
   * are two.
   */
  private static final int PEAK_REACH = 3;

  /** The time of a peak is looked for this many steps around it. */
  private static final int TIME_REACH = 5;

  private static final int CENTRE_REACH = 2;

  /**
   * A moment at which something may begin.
   *
   * @param step the step of the peak
   * @param centre the centre of gravity of the answer around its highest step nearby, in steps
   * @param confidence how sure it is, 0 to 1
   */
  record Peak(int step, double centre, double confidence) {

    Peak withConfidence(double other) {
      return new Peak(step, centre, other);
    }
  }

  private final float[] likelihood;

  OnsetPeaks(float[] likelihood) {
    this.likelihood = likelihood;
  }

  /** The peaks of at least some confidence, in order of time; they may be close together. */
  List<Peak> atLeast(double leastConfidence) {
    return IntStream.range(0, likelihood.length)
        .mapToObj(step -> peakAt(step, leastConfidence))
        .flatMap(Optional::stream)
        .toList();
  }

  /** The peak at a step, if there is one of at least some confidence. */
  Optional<Peak> peakAt(int step, double leastConfidence) {
    return confidence(step) >= leastConfidence && isPeak(step)
        ? Optional.of(new Peak(step, centreNear(step), confidence(step)))
        : Optional.empty();
  }

  /** How sure it is that something begins near a step, 0 to 1. */
  double confidence(int step) {
    float sum = 0;
    for (int s = step - SPREAD; s <= step + SPREAD; s++) {
      sum += at(s);
    }
    return Math.min(1, sum / CERTAIN);
  }

  /**
   * Drops the less sure of any two that are closer than onsets can be.
   *
   * @param peaks in any order
   * @param leastSteps two are kept if they are at least so far apart
   * @return what is kept, in order of time
   */
  static List<Peak> apart(List<Peak> peaks, int leastSteps) {
    List<Peak> surest = new ArrayList<>(peaks);
    surest.sort(Comparator.comparing(peak -> -peak.confidence()));
    List<Peak> apart = new ArrayList<>();
    boolean[] taken = new boolean[1 + peaks.stream().mapToInt(Peak::step).max().orElse(0)];
    for (Peak peak : surest) {
      if (!taken[peak.step()]) {
        apart.add(peak);
        int from = Math.max(0, peak.step() - leastSteps + 1);
        Arrays.fill(taken, from, Math.min(taken.length, peak.step() + leastSteps), true);
      }
    }
    apart.sort(Comparator.comparing(Peak::step));
    return apart;
  }

  private boolean isPeak(int step) {
    float here = smooth(step);
    for (int s = step - PEAK_REACH; s <= step + PEAK_REACH; s++) {
      if (s != step && (smooth(s) > here || (s < step && smooth(s) == here))) {
        return false;
      }
    }
    return true;
  }

  private float smooth(int step) {
    return 3 * at(step) + 2 * (at(step - 1) + at(step + 1)) + at(step - 2) + at(step + 2);
  }

  private double centreNear(int step) {
    int highest = step;
    for (int s = step - TIME_REACH; s <= step + TIME_REACH; s++) {
      if (at(s) > at(highest)) {
        highest = s;
      }
    }
    double weight = 0;
    double moment = 0;
    for (int s = highest - CENTRE_REACH; s <= highest + CENTRE_REACH; s++) {
      weight += at(s);
      moment += at(s) * s;
    }
    return moment / weight;
  }

  private float at(int step) {
    return step < 0 || step >= likelihood.length ? 0 : likelihood[step];
  }
}
