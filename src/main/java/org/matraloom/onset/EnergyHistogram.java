package org.matraloom.onset;

/** How often which energy occurs, in steps of an eighth of a decibel, so that memory is bounded. */
final class EnergyHistogram {

  private static final int PER_DECIBEL = 8;
  private static final int LOWEST_DB = -200;
  private static final int BINS = (60 - LOWEST_DB) * PER_DECIBEL;

  private final long[] counts = new long[BINS];
  private long total;

  void add(float energy) {
    counts[bin(energy)]++;
    total++;
  }

  /** The energy below which a share of all windows lies; 0 if the lowest bin reaches that far. */
  float below(double share) {
    long wanted = (long) (share * total);
    long seen = 0;
    for (int bin = 0; bin < BINS; bin++) {
      seen += counts[bin];
      if (seen > wanted) {
        return bin == 0 ? 0 : energyOf(bin);
      }
    }
    return 0;
  }

  /** Only the windows above an energy. */
  EnergyHistogram above(float energy) {
    EnergyHistogram part = new EnergyHistogram();
    for (int bin = bin(energy) + 1; bin < BINS; bin++) {
      part.counts[bin] = counts[bin];
      part.total += counts[bin];
    }
    return part;
  }

  private static int bin(float energy) {
    if (!(energy > 1e-20f)) {
      return 0;
    }
    double decibels = 10 * Math.log10(energy);
    return (int) Math.max(0, Math.min(BINS - 1, Math.round((decibels - LOWEST_DB) * PER_DECIBEL)));
  }

  private static float energyOf(int bin) {
    return (float) StrictMath.pow(10, ((double) bin / PER_DECIBEL + LOWEST_DB) / 10);
  }
}
