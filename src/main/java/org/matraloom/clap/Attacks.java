package org.matraloom.clap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.matraloom.onset.BandEnergies;

/**
 * Finds where some part of the sound grows suddenly, be it a consonant, a clap, a click or a knock;
 * finer than the ear for sollus, and under a vowel that goes on too.
 *
 * <p>A rise is measured against the loudest of the 20 ms before, so that the pulses of a low voice
 * do not count (after Böck and Widmer, DAFx 2013).
 */
final class Attacks {

  private static final int WIDE_BANDS = 8;
  private static final int PER_WIDE = BandEnergies.BANDS / WIDE_BANDS;

  /** The bands that rise most and count; a click of one pitch moves about three. */
  static final int RISING_BANDS = 3;

  private static final double LEAST_DB = 6;
  private static final float LEAST_RATIO = 2;

  /** No two attacks are closer than these steps. */
  private static final int APART_STEPS = 5;

  private static final int BEFORE_FROM = 5;
  private static final int BEFORE_TO = 2;

  /** A rise is over after so many steps from the last one before it. */
  private static final int REACH_STEPS = 7;

  private static final int LASTING_BEFORE_FROM = 8;
  private static final int LASTING_BEFORE_TO = 3;
  private static final int LASTING_FROM = 10;
  private static final int LASTING_TO = 16;

  /** The energy that a band has at least for so much of the time is its noise. */
  private static final double NOISE_SHARE = 0.2;

  /** Every so many steps is looked at to learn the noise. */
  private static final int NOISE_STEPS = 10;

  /** How far below the loudest moment of the loudest band a band says nothing: 60 dB. */
  private static final float BELOW_PEAK = 1e-6f;

  private static final float ABOVE_NOISE = 4;

  private final BandEnergies energies;
  private final float[][] wide;
  private final int steps;

  Attacks(BandEnergies energies) {
    this.energies = energies;
    this.steps = energies.steps();
    this.wide = new float[(energies.usedBands() + PER_WIDE - 1) / PER_WIDE][steps];
    for (int band = 0; band < energies.usedBands(); band++) {
      float[] sum = wide[band / PER_WIDE];
      for (int step = 0; step < steps; step++) {
        sum[step] += energies.energy(step, band);
      }
    }
    raiseToFloor();
  }

  private void raiseToFloor() {
    float[] noise = new float[wide.length];
    float peak = Float.MIN_NORMAL;
    for (int band = 0; band < wide.length; band++) {
      float[] some = new float[(steps + NOISE_STEPS - 1) / NOISE_STEPS];
      for (int i = 0; i < some.length; i++) {
        some[i] = wide[band][i * NOISE_STEPS];
      }
      Arrays.sort(some);
      noise[band] = some[(int) (NOISE_SHARE * some.length)];
      peak = Math.max(peak, some[some.length - 1]);
    }
    for (int band = 0; band < wide.length; band++) {
      float floor = Math.max(ABOVE_NOISE * noise[band], BELOW_PEAK * peak);
      for (int step = 0; step < steps; step++) {
        wide[band][step] += floor;
      }
    }
  }

  /** All attacks, in order of time. */
  List<Attack> all() {
    float[] strength = new float[steps];
    float[] ratios = new float[wide.length];
    for (int step = BEFORE_FROM; step < steps - 2; step++) {
      for (int band = 0; band < wide.length; band++) {
        ratios[band] = rise(wide[band], step);
      }
      Arrays.sort(ratios);
      if (ratios[Math.max(0, wide.length - RISING_BANDS)] > LEAST_RATIO) {
        for (int band = Math.max(0, wide.length - RISING_BANDS); band < wide.length; band++) {
          strength[step] += decibels(ratios[band]) / RISING_BANDS;
        }
      }
    }
    List<Attack> attacks = new ArrayList<>();
    for (int step = BEFORE_FROM; step < steps - 2; step++) {
      if (strength[step] >= LEAST_DB && isHighest(strength, step)) {
        attacks.add(at(step, strength));
      }
    }
    return attacks;
  }

  private static float rise(float[] band, int step) {
    float before = 0;
    for (int s = step - BEFORE_FROM; s <= step - BEFORE_TO; s++) {
      before = Math.max(before, band[s]);
    }
    return Math.max(band[step + 1], band[step + 2]) / before;
  }

  private static boolean isHighest(float[] strength, int step) {
    int to = Math.min(strength.length - 1, step + APART_STEPS);
    for (int s = Math.max(0, step - APART_STEPS); s <= to; s++) {
      if (strength[s] > strength[step] || (strength[s] == strength[step] && s < step)) {
        return false;
      }
    }
    return true;
  }

  private Attack at(int step, float[] strength) {
    float[] riseDb = new float[WIDE_BANDS];
    float[] lastingDb = new float[WIDE_BANDS];
    for (int band = 0; band < wide.length; band++) {
      riseDb[band] = Math.max(0, Math.min(40, decibels(rise(wide[band], step))));
      float before = mean(wide[band], step - LASTING_BEFORE_FROM, step - LASTING_BEFORE_TO);
      float after = mean(wide[band], step + LASTING_FROM, step + LASTING_TO);
      lastingDb[band] = Math.max(-15, Math.min(40, decibels(after / before)));
    }
    return new Attack(energies.secondsAt(halfWay(step, riseDb)), strength[step], riseDb, lastingDb);
  }

  /** Where the bands that rise most have come to half of what they reach. */
  private double halfWay(int step, float[] riseDb) {
    float[] sorted = riseDb.clone();
    Arrays.sort(sorted);
    float least = sorted[WIDE_BANDS - RISING_BANDS];
    float[] share = new float[REACH_STEPS];
    for (int band = 0; band < wide.length; band++) {
      if (riseDb[band] >= least) {
        float highest = 0;
        for (int i = 0; i < REACH_STEPS; i++) {
          highest = Math.max(highest, wide[band][at(step - BEFORE_TO + i)]);
        }
        for (int i = 0; i < REACH_STEPS; i++) {
          share[i] += wide[band][at(step - BEFORE_TO + i)] / highest;
        }
      }
    }
    float half = 0;
    for (float each : share) {
      half = Math.max(half, each / 2);
    }
    int i = 1;
    while (i < REACH_STEPS - 1 && share[i] < half) {
      i++;
    }
    double part = share[i] > share[i - 1] ? (half - share[i - 1]) / (share[i] - share[i - 1]) : 0;
    return step - BEFORE_TO + i - 1 + Math.max(0, Math.min(1, part));
  }

  private int at(int step) {
    return Math.max(0, Math.min(steps - 1, step));
  }

  private float mean(float[] band, int from, int to) {
    float sum = 0;
    for (int step = from; step <= to; step++) {
      sum += band[at(step)];
    }
    return sum / (to - from + 1);
  }

  private static float decibels(float ratio) {
    return (float) (10 * Math.log10(ratio));
  }
}
