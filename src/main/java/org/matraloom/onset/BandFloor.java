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

  /** The floor of each band, as energy; above 0. */
  static float[] of(BandEnergies energies) {
    int bands = energies.usedBands();
    float[] floor = new float[bands];
    double peak = NOTHING;
    for (int b = 0; b < bands; b++) {
      EnergyHistogram all = new EnergyHistogram();
      for (int step = 0; step < energies.steps(); step++) {
        all.add(energies.energy(step, b));
      }
      float noise = all.below(NOISE_SHARE);
      floor[b] = ABOVE_NOISE * noise;
      peak = Math.max(peak, all.above(SOUND_ABOVE_NOISE * noise).below(PEAK_SHARE));
    }
    for (int b = 0; b < bands; b++) {
      floor[b] = (float) Math.max(floor[b], peak * BELOW_PEAK);
    }
    return floor;
  }
}
