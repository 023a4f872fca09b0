package org.matraloom.loudness;

/**
 * How loud a short stretch of a sound is: the K-weighted power of ITU-R BS.1770-4 over just this
 * stretch, without gates, which a vowel of a tenth of a second is too short for.
 */
public final class StretchLoudness {

  private static final double OFFSET_DB = -0.691;

  private StretchLoudness() {}

  /**
   * Measures.
   *
   * @param sound one channel, full scale at 1
   * @param fromFrame the first frame that counts; what lies before only fills the filters
   * @param toFrame the first that does not count any more
   * @param ratePerSecond frames a second
   * @return LUFS; negative infinity for silence or an empty stretch
   */
  public static double lufs(float[] sound, int fromFrame, int toFrame, int ratePerSecond) {
    KWeighting filter = new KWeighting(ratePerSecond);
    double energy = 0;
    int end = Math.min(toFrame, sound.length);
    for (int frame = 0; frame < end; frame++) {
      double weighted = filter.filter(sound[frame]);
      if (frame >= fromFrame) {
        energy += weighted * weighted;
      }
    }
    int frames = end - Math.max(0, fromFrame);
    return frames <= 0 || energy == 0
        ? Double.NEGATIVE_INFINITY
        : OFFSET_DB + 10 * StrictMath.log10(energy / frames);
  }
}
