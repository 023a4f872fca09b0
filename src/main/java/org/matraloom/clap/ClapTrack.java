package org.matraloom.clap;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A beat followed through the attacks of a recording, from one guess of its phase and period.
 *
 * <p>The state is when the next beat falls and how long a beat is, with their covariance (R. E.
 * Kalman, J. Basic Eng. 82 (1960) 35-45). A clap near where one is due corrects both.
 *
 * @param claps the claps found, in order of time
 * @param missed the places at which a clap could have been told and none was, ascending
 * @param fit the logarithm of the likelihood of the times of the claps, against that of attacks
 *     that come by chance
 */
record ClapTrack(List<Clap> claps, List<Integer> missed, double fit) {

  /**
   * A clap.
   *
   * @param place how many places of the grid after the one of the guess; negative before
   * @param seconds when it was heard
   */
  record Clap(int place, double seconds) {}

  /** How far a clap is off its beat, and how much the period changes from beat to beat. */
  private static final double JITTER_SECONDS = 0.008;

  private static final double PERIOD_CHANGE = 0.0015;

  /** How well the guess is known. */
  private static final double START_SECONDS = 0.006;

  private static final double START_PERIOD = 0.001;

  /** Talas, or halves of them, of up to so many beats are known by their claps. */
  private static final int MOST_CYCLE_BEATS = 8;

  /** How far from where it is due a clap may be. */
  private static final double MOST_SPREADS = 2.5;

  private static final double MOST_OFF_SECONDS = 0.050;
  private static final double MOST_OFF_SHARE = 0.12;

  /**
   * Follows both ways from a guess.
   *
   * @param evidence what was heard
   * @param atSeconds where a beat falls
   * @param periodSeconds how long a beat is
   * @param fromSeconds nothing before is looked at
   */
  static ClapTrack of(
      ClapEvidence evidence, double atSeconds, double periodSeconds, double fromSeconds) {
    Follower back = new Follower(evidence, atSeconds, periodSeconds, -1);
    back.run(fromSeconds);
    Collections.reverse(back.claps);
    Collections.reverse(back.missed);
    Follower on = new Follower(evidence, atSeconds, periodSeconds, 1);
    on.run(fromSeconds);
    back.claps.addAll(on.claps);
    back.missed.addAll(on.missed);
    return new ClapTrack(back.claps, back.missed, back.fit + on.fit);
  }

  /** At which share of the places where one could be told there is a clap; 0 if there is none. */
  double share() {
    return claps.isEmpty() ? 0 : (double) claps.size() / (claps.size() + missed.size());
  }

  /** The logarithm of how much likelier all that was heard is with this beat than without. */
  double evidence() {
    return claps.isEmpty() ? Double.NEGATIVE_INFINITY : fit + surprise(claps.size(), missed.size());
  }

  /**
   * How much more speaks for the claps if they come at some beats of a cycle only, as those of a
   * tala do. Each beat of the cycle has a share of its own, for which half the logarithm of the
   * number of places is paid (G. Schwarz, Ann. Stat. 6 (1978) 461-464).
   */
  double talaEvidence() {
    double places = claps.size() + missed.size();
    double even = surprise(claps.size(), missed.size());
    double most = 0;
    for (int beats = 2; beats <= MOST_CYCLE_BEATS; beats++) {
      int[] heard = new int[beats];
      int[] silent = new int[beats];
      for (Clap clap : claps) {
        heard[Math.floorMod(clap.place(), beats)]++;
      }
      for (int place : missed) {
        silent[Math.floorMod(place, beats)]++;
      }
      double sum = -even - (beats - 1) * Math.log(places) / 2;
      for (int beat = 0; beat < beats; beat++) {
        sum += surprise(heard[beat], silent[beat]);
      }
      most = Math.max(most, sum);
    }
    return most;
  }

  private static double surprise(int heard, int silent) {
    return part(heard, heard + silent) + part(silent, heard + silent);
  }

  private static double part(int count, int all) {
    return count == 0 ? 0 : count * Math.log((double) count / all);
  }

  private static final class Follower {
    private final List<Clap> claps = new ArrayList<>();
    private final List<Integer> missed = new ArrayList<>();
    private final ClapEvidence evidence;
    private final int direction;
    private final double guess;
    private double at;
    private double period;
    private double atVariance = START_SECONDS * START_SECONDS;
    private double both;
    private double periodVariance;
    private double fit;

    Follower(ClapEvidence evidence, double at, double period, int direction) {
      this.evidence = evidence;
      this.at = at;
      this.period = period;
      this.guess = period;
      this.direction = direction;
      this.periodVariance = START_PERIOD * START_PERIOD * period * period;
    }

    void run(double fromSeconds) {
      int place = 0;
      if (direction < 0) {
        place = step(place);
      }
      while (at >= fromSeconds && at <= evidence.lengthSeconds()) {
        if (evidence.isOpen(at)) {
          look(place);
        }
        place = step(place);
      }
    }

    private int step(int place) {
      at += direction * period;
      double change = PERIOD_CHANGE * guess;
      atVariance += 2 * direction * both + periodVariance;
      both += direction * periodVariance;
      periodVariance += change * change;
      return place + direction;
    }

    private void look(int place) {
      double variance = atVariance + JITTER_SECONDS * JITTER_SECONDS;
      double heard = evidence.nearest(at);
      double off = heard - at;
      double most =
          Math.min(
              MOST_SPREADS * Math.sqrt(variance),
              Math.min(MOST_OFF_SECONDS, MOST_OFF_SHARE * guess));
      if (Math.abs(off) > most) {
        missed.add(place);
        return;
      }
      claps.add(new Clap(place, heard));
      fit +=
          -0.5 * (off * off / variance + Math.log(2 * Math.PI * variance))
              - Math.log(evidence.perSecond());
      double gain = atVariance / variance;
      double periodGain = both / variance;
      at += gain * off;
      period += periodGain * off;
      periodVariance -= periodGain * both;
      both -= periodGain * atVariance;
      atVariance -= gain * atVariance;
    }
  }
}
