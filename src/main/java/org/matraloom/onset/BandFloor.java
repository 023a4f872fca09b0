package org.matraloom.onset;

/**
 * The level below which a band of a recording says nothing: above its own noise, and not too far
 * below the loudest band.
 *
 * <p>Levels are counted from here, so a quiet take and a loud one look alike, and silence is never
 * raised to the level of speech.
 */
final class BandFloor {

  /** How far above the energy that a band falls below for a tenth of the time, as a factor. */
  private static final float ABOVE_NOISE = 4;

  private static final double NOISE_SHARE = 0.10;

  /** Windows this much above the noise hold sound, as a factor of energy. */
  private static final float SOUND_ABOVE_NOISE = 16;

  /** Of the windows with sound, the share that is below what counts as the peak. */
  private static final double PEAK_SHARE = 0.99;

  /** How far below the peak of the loudest band the floor may lie, as a factor of energy: 58 dB. */
  private static final double BELOW_PEAK = 1.58489e-6;

  /** Below this energy a recording is silent. */
  private static final double NOTHING = 1e-12;

  private BandFloor() {}

  /** The floor of each band of a whole recording, as energy; above 0. */
  static float[] of(BandEnergies energies) {
    EnergyHistogram[] bands = new EnergyHistogram[energies.usedBands()];
    for (int b = 0; b < bands.length; b++) {
      bands[b] = new EnergyHistogram();
      for (int step = 0; step < energies.steps(); step++) {
        bands[b].add(energies.energy(step, b));
      }
    }
    return of(bands, NOTHING);
  }

  /**
   * The floor of each band by what was heard in it.
   *
   * @param bands the energies of each
   * @param leastPeak the peak of the loudest is taken to be no lower
   */
  static float[] of(EnergyHistogram[] bands, double leastPeak) {
    float[] floor = new float[bands.length];
    double peak = leastPeak;
    for (int b = 0; b < floor.length; b++) {
      float noise = bands[b].below(NOISE_SHARE);
      floor[b] = ABOVE_NOISE * noise;
      peak = Math.max(peak, bands[b].above(SOUND_ABOVE_NOISE * noise).below(PEAK_SHARE));
    }
    for (int b = 0; b < floor.length; b++) {
      floor[b] = (float) Math.max(floor[b], peak * BELOW_PEAK);
    }
    return floor;
  }
}
