package org.matraloom.loudness;

/**
 * How loud a short stretch of a sound is: the K-weighted power of ITU-R BS.1770-4 over its loudest
 * part, without gates, which a vowel of a tenth of a second is too short for.
 */
public final class StretchLoudness {

  private static final double OFFSET_DB = -0.691;

  private StretchLoudness() {}

  /**
   * Measures the loudest part of a stretch.
   *
   * @param sound one channel, full scale at 1
   * @param fromFrame the first frame that counts; what lies before only fills the filters
   * @param toFrame the first that does not count any more
   * @param windowFrames how long the part is, moved on by a quarter of itself; a shorter stretch
   *     counts as a whole
   * @param ratePerSecond frames a second
   * @return LUFS; negative infinity for silence or an empty stretch
   */
  public static double loudestLufs(
      float[] sound, int fromFrame, int toFrame, int windowFrames, int ratePerSecond) {
    KWeighting filter = new KWeighting(ratePerSecond);
    int from = Math.max(0, fromFrame);
    int end = Math.min(toFrame, sound.length);
    if (end <= from) {
      return Double.NEGATIVE_INFINITY;
    }
    double[] energy = new double[end - from + 1];
    for (int frame = 0; frame < end; frame++) {
      double weighted = filter.filter(sound[frame]);
      if (frame >= from) {
        energy[frame - from + 1] = energy[frame - from] + weighted * weighted;
      }
    }
    int window = Math.min(windowFrames, end - from);
    double most = 0;
    for (int at = 0; at + window <= end - from; at += Math.max(1, window / 4)) {
      most = Math.max(most, energy[at + window] - energy[at]);
    }
    return most == 0 ? Double.NEGATIVE_INFINITY : OFFSET_DB + 10 * StrictMath.log10(most / window);
  }
}
