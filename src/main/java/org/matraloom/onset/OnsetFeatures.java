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
  private static final float LEVEL_SCALE = 1 / 20f;
  private static final float RISE_SCALE = 1 / 10f;

  private final int steps;
  private final float[][] levels;
  private final float[][] rises;

  private OnsetFeatures(int steps) {
    this.steps = steps;
    this.levels = new float[WIDE_BANDS][steps];
    this.rises = new float[WIDE_BANDS][steps];
  }

  static OnsetFeatures of(BandEnergies energies) {
    float[] floor = BandFloor.of(energies);
    OnsetFeatures features = new OnsetFeatures(energies.steps());
    float[][] recent = new float[FARTHEST_LAG + 1][BandEnergies.BANDS];
    for (int step = 0; step < features.steps; step++) {
      float[] now = recent[step % recent.length];
      for (int b = 0; b < floor.length; b++) {
        now[b] = (float) (10 * Math.log10(1 + energies.energy(step, b) / floor[b]));
      }
      features.put(step, now, recent);
    }
    return features;
  }

  private void put(int step, float[] now, float[][] recent) {
    float[] highest = new float[BandEnergies.BANDS];
    for (int lag = NEAREST_LAG; lag <= FARTHEST_LAG; lag++) {
      float[] then = recent[Math.max(0, step - lag) % recent.length];
      for (int b = 0; b < highest.length; b++) {
        highest[b] = Math.max(highest[b], then[b]);
      }
    }
    for (int b = 0; b < highest.length; b++) {
      float before = highest[b];
      before = Math.max(before, highest[Math.max(0, b - 1)]);
      before = Math.max(before, highest[Math.min(highest.length - 1, b + 1)]);
      levels[b / PER_WIDE][step] += now[b] * LEVEL_SCALE / PER_WIDE;
      rises[b / PER_WIDE][step] += Math.max(0, now[b] - before) * RISE_SCALE / PER_WIDE;
    }
  }

  /** The number of steps. */
  int steps() {
    return steps;
  }

  /** The level of a wide band, in units of 20 dB above its floor; the ends repeat outside. */
  float level(int step, int band) {
    return levels[band][Math.max(0, Math.min(steps - 1, step))];
  }

  /** The rise of a wide band, in units of 10 dB, at least 0. */
  float rise(int step, int band) {
    return rises[band][Math.max(0, Math.min(steps - 1, step))];
  }

  /** The level of the loudest wide band, in decibels above its floor. */
  float highestLevelDb(int step) {
    float highest = 0;
    for (int band = 0; band < WIDE_BANDS; band++) {
      highest = Math.max(highest, levels[band][step]);
    }
    return highest / LEVEL_SCALE;
  }
}
