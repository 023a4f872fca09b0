package org.matraloom.onset;

import java.util.Arrays;
import java.util.List;

/**
 * How well a moment fits the pulse of the sure onsets around it.
 *
 * <p>What is recited or struck comes at intervals that come again. A faint peak whose distances to
 * the sure onsets near it are distances that those have among themselves is likelier an onset than
 * one at odd distances. Where the intervals follow no pulse, all distances are alike and nothing is
 * changed. No tempo is asked for, none is found.
 */
final class PulseSupport {

  /** Sure onsets count up to so far from the moment. */
  private static final double REACH_SECONDS = 4;

  /** Distances are compared between these. */
  private static final double SHORTEST_SECONDS = 0.06;

  private static final double LONGEST_SECONDS = 1;

  /** Two distances agree fully at 0 and no longer at this difference: hands and tongues waver. */
  private static final double AGREE_SECONDS = 0.025;

  /** With fewer distances than these nothing can be said. */
  private static final int LEAST_AROUND = 3;

  private static final int LEAST_AMONG = 10;

  /** The most that is said for and against a moment; a late onset is still an onset. */
  private static final double MOST = 8;

  private static final double LEAST = 0.07;

  /** However sure, no peak is quite certain. */
  private static final double SUREST = 0.995;

  private final double[] sureSeconds;

  /**
   * Takes the sure onsets of a recording.
   *
   * @param sure in order of time
   */
  PulseSupport(List<Onset> sure) {
    sureSeconds = sure.stream().mapToDouble(Onset::seconds).toArray();
  }

  /**
   * An onset as sure as it is with the pulse taken into account.
   *
   * @param heard as it was judged from the sound alone
   * @return the same moment with the odds multiplied by the support
   */
  Onset weighed(Onset heard) {
    double confidence = Math.min(SUREST, heard.confidence());
    double odds = confidence / (1 - confidence) * supportAt(heard.seconds());
    return new Onset(heard.seconds(), odds / (1 + odds));
  }

  /** How often the distances from a moment occur, to how often they would by chance. */
  double supportAt(double seconds) {
    double[] near = near(seconds);
    double agreement = 0;
    int around = 0;
    for (double sure : near) {
      around += isCompared(Math.abs(sure - seconds)) ? 1 : 0;
    }
    int among = 0;
    for (int i = 0; i < near.length; i++) {
      for (int j = i + 1; j < near.length && near[j] - near[i] < LONGEST_SECONDS; j++) {
        if (isCompared(near[j] - near[i])) {
          among++;
          agreement += agreement(near, seconds, near[j] - near[i]);
        }
      }
    }
    if (around < LEAST_AROUND || among < LEAST_AMONG) {
      return 1;
    }
    double chance = AGREE_SECONDS / (LONGEST_SECONDS - SHORTEST_SECONDS);
    return Math.max(LEAST, Math.min(MOST, agreement / (chance * around * among)));
  }

  private static double agreement(double[] near, double seconds, double distance) {
    double agreement = 0;
    for (double sure : near) {
      double other = Math.abs(sure - seconds);
      if (isCompared(other)) {
        agreement += Math.max(0, 1 - Math.abs(other - distance) / AGREE_SECONDS);
      }
    }
    return agreement;
  }

  private static boolean isCompared(double distance) {
    return distance > SHORTEST_SECONDS && distance < LONGEST_SECONDS;
  }

  /** The sure onsets around a moment, without the moment itself. */
  private double[] near(double seconds) {
    int from = place(seconds - REACH_SECONDS);
    int to = place(seconds + REACH_SECONDS);
    return Arrays.stream(sureSeconds, from, to)
        .filter(sure -> Math.abs(sure - seconds) > OnsetCurve.LEAST_INTERVAL_SECONDS / 2)
        .toArray();
  }

  /** The first sure onset that is not before a moment. */
  private int place(double seconds) {
    int found = Arrays.binarySearch(sureSeconds, seconds);
    return found < 0 ? -found - 1 : found;
  }
}
