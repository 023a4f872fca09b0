package org.matraloom.clap;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * A moment at which some part of the sound grows suddenly.
 *
 * @param seconds from the beginning of the recording
 * @param strengthDb how much the three wide bands that rise most rise, on the average
 * @param riseDb how much each wide band rises, 0 to 40
 * @param lastingDb how much louder each wide band is 50 ms later than it was before, -15 to 40
 */
record Attack(double seconds, double strengthDb, float[] riseDb, float[] lastingDb) {

  /** The lowest wide bands, up to 900 Hz, in which a voice hums and a vowel is loud. */
  private static final int LOW_BANDS = 2;

  private static final double LEAST_LASTING_DB = 6;

  /** What a stroke has lost of its rise 50 ms later, at least, in a small room too. */
  private static final double LEAST_DECAY_DB = 10;

  /** A stroke rises in the high bands at least by this share of what it does in the low ones. */
  private static final double LEAST_HIGH = 0.7;

  /** Whether something begins here that goes on, as a vowel or a hiss; a clap dies away. */
  boolean goesOn() {
    float[] sorted = riseDb.clone();
    Arrays.sort(sorted);
    float least = sorted[riseDb.length - Attacks.RISING_BANDS];
    return goesOn(band -> band <= LOW_BANDS) || goesOn(band -> riseDb[band] >= least);
  }

  private boolean goesOn(IntPredicate counts) {
    double rise =
        IntStream.range(0, riseDb.length)
            .filter(counts)
            .mapToDouble(b -> riseDb[b])
            .average()
            .orElse(0);
    double lasting =
        IntStream.range(0, riseDb.length)
            .filter(counts)
            .mapToDouble(b -> lastingDb[b])
            .average()
            .orElse(0);
    return lasting > LEAST_LASTING_DB && lasting > rise - LEAST_DECAY_DB;
  }

  /** Whether the high bands rise: the hum before a voiced consonant is released is low. */
  boolean isBright() {
    float low = 0;
    float high = 0;
    for (int band = 0; band < riseDb.length; band++) {
      if (band < LOW_BANDS) {
        low = Math.max(low, riseDb[band]);
      } else {
        high = Math.max(high, riseDb[band]);
      }
    }
    return high >= LEAST_HIGH * low;
  }

  /** How unlike two attacks are: the squared distance of what they do to the bands. */
  double distance(Attack other) {
    double sum = 0;
    for (int band = 0; band < riseDb.length; band++) {
      double rise = riseDb[band] - other.riseDb[band];
      double lasting = lastingDb[band] - other.lastingDb[band];
      sum += rise * rise + lasting * lasting;
    }
    return sum;
  }
}
