package org.matraloom.onset;

/**
 * What is looked at to tell whether a syllable begins at a moment: levels around it and sudden
 * rises of level.
 *
 * <p>Levels are decibels above {@link BandFloor}, compressed towards it. A rise is the level less
 * the highest level in this band and its neighbours shortly before, so that neither the glide of a
 * tone nor the pulses of a low voice count (after Böck and Widmer, "Maximum filter vibrato
 * suppression for onset detection", DAFx 2013; the log-compressed flux in bands after Böck, Krebs
 * and Schedl, "Evaluating the online capabilities of onset detection methods", ISMIR 2012).
 */
final class OnsetFeatures {

  /** Bands of the features: three neighbours of {@link BandEnergies} make one. */
  static final int WIDE_BANDS = 8;

  private static final int PER_WIDE = BandEnergies.BANDS / WIDE_BANDS;

  /** A rise is measured against what lay this many steps back. */
  private static final int NEAREST_LAG = 3;

  private static final int FARTHEST_LAG = 7;

  /** No wide band rises by as much as this, in units of 10 dB: nothing begins. */
  private static final float LEAST_RISE = 0.1f;

  /** Rises are looked for this many steps around a moment. */
  private static final int RISE_REACH = 3;

  private static final float LEVEL_SCALE = 1 / 20f;
  private static final float RISE_SCALE = 1 / 10f;

  private final int kept;
  private final float[][] levels;
  private final float[][] rises;
  private final float[][] recent = new float[FARTHEST_LAG + 1][BandEnergies.BANDS];
  private int steps;

  /**
   * Nothing has been looked at.
   *
   * @param kept so many of the latest steps can be asked for
   */
  OnsetFeatures(int kept) {
    this.kept = kept;
    this.levels = new float[WIDE_BANDS][kept];
    this.rises = new float[WIDE_BANDS][kept];
  }

  static OnsetFeatures of(BandEnergies energies) {
    float[] floor = BandFloor.of(energies);
    OnsetFeatures features = new OnsetFeatures(energies.steps());
    float[] now = new float[floor.length];
    for (int step = 0; step < energies.steps(); step++) {
      for (int b = 0; b < now.length; b++) {
        now[b] = energies.energy(step, b);
      }
      features.add(now, floor);
    }
    return features;
  }

  /**
   * The next step.
   *
   * @param energies of the bands that are used
   * @param floor below which each of them says nothing, above 0
   */
  void add(float[] energies, float[] floor) {
    float[] now = recent[steps % recent.length];
    for (int b = 0; b < floor.length; b++) {
      now[b] = (float) (10 * Math.log10(1 + energies[b] / floor[b]));
    }
    put(steps, now);
    steps++;
  }

  private void put(int step, float[] now) {
    float[] highest = new float[BandEnergies.BANDS];
    for (int lag = NEAREST_LAG; lag <= FARTHEST_LAG; lag++) {
      float[] then = recent[Math.max(0, step - lag) % recent.length];
      for (int b = 0; b < highest.length; b++) {
        highest[b] = Math.max(highest[b], then[b]);
      }
    }
    int at = step % kept;
    for (int wide = 0; wide < WIDE_BANDS; wide++) {
      levels[wide][at] = 0;
      rises[wide][at] = 0;
    }
    for (int b = 0; b < highest.length; b++) {
      float before = highest[b];
      before = Math.max(before, highest[Math.max(0, b - 1)]);
      before = Math.max(before, highest[Math.min(highest.length - 1, b + 1)]);
      levels[b / PER_WIDE][at] += now[b] * LEVEL_SCALE / PER_WIDE;
      rises[b / PER_WIDE][at] += Math.max(0, now[b] - before) * RISE_SCALE / PER_WIDE;
    }
  }

  private int place(int step) {
    return Math.max(0, Math.min(steps - 1, step)) % kept;
  }

  /** The number of steps. */
  int steps() {
    return steps;
  }

  /** The level of a wide band, in units of 20 dB above its floor; the ends repeat outside. */
  float level(int step, int band) {
    return levels[band][place(step)];
  }

  /** The rise of a wide band, in units of 10 dB, at least 0. */
  float rise(int step, int band) {
    return rises[band][place(step)];
  }

  /** Whether any wide band rises near a step; where none does, nothing begins. */
  boolean rises(int step) {
    for (int s = step - RISE_REACH; s <= step + RISE_REACH; s++) {
      for (int band = 0; band < WIDE_BANDS; band++) {
        if (rise(s, band) >= LEAST_RISE) {
          return true;
        }
      }
    }
    return false;
  }

  /** The level of the loudest wide band, in decibels above its floor. */
  float highestLevelDb(int step) {
    float highest = 0;
    for (int band = 0; band < WIDE_BANDS; band++) {
      highest = Math.max(highest, levels[band][place(step)]);
    }
    return highest / LEVEL_SCALE;
  }
}
