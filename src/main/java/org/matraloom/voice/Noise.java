package org.matraloom.voice;

/**
 * White noise that is the same on every machine.
 *
 * <p>Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8(14), 2003, shifts 13, 7, 17.
 */
public final class Noise {

  private static final double SCALE = 0x1p-52;

  private long state;

  /**
   * A run of noise; the seed is any number but 0.
   *
   * @param seed where the run begins
   */
  public Noise(long seed) {
    state = seed;
  }

  /**
   * The next sample, from -1 to 1.
   *
   * @return a sample
   */
  public double next() {
    state ^= state << 13;
    state ^= state >>> 7;
    state ^= state << 17;
    return (state >>> 11) * SCALE - 1;
  }
}
