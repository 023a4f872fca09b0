package org.matraloom.sound;

import org.matraloom.voice.Noise;

/**
 * One stroke of a plucked string.
 *
 * <p>A delay line whose content goes round through a loss filter (Karplus and Strong, "Digital
 * synthesis of plucked-string and drum timbres", Computer Music Journal 7(2), 1983), tuned exactly
 * by an all-pass filter and with a set decay (Jaffe and Smith, "Extensions of the Karplus-Strong
 * plucked-string algorithm", same issue): the delays of line, loss filter and all-pass at the
 * wanted pitch add up to one period.
 */
final class PluckedString {

  /** How much of the loss filter's output comes from the sample before; less is brighter. */
  private static final double DULLNESS = 0.06;

  /** How far from the bridge the string is plucked, as a part of its length. */
  private static final double PLUCK_PLACE = 0.23;

  /** The excitation is drawn once a period at this many points, whatever the rate. */
  private static final double SOFTENING_HZ = 2_800;

  private PluckedString() {}

  /**
   * Plucks.
   *
   * @param hertz the pitch
   * @param fallSeconds the time in which the sound falls by 60 dB
   * @param frames how long the stroke is
   * @param seed of the noise that the string is plucked with
   * @return the wave, not normalised
   */
  static float[] stroke(
      double hertz, double fallSeconds, int ratePerSecond, int frames, long seed) {
    double omega = 2 * StrictMath.PI * hertz / ratePerSecond;
    double period = ratePerSecond / hertz;
    double rest = period - lossDelay(omega);
    int line = (int) StrictMath.floor(rest - 0.1);
    double fraction = rest - line;
    double allPass =
        StrictMath.sin((1 - fraction) * omega / 2) / StrictMath.sin((1 + fraction) * omega / 2);
    double keep = StrictMath.pow(10, -3 / (fallSeconds * hertz)) / lossGain(omega);

    double[] loop = excitation(line, ratePerSecond, seed);
    float[] wave = new float[frames];
    double lossBefore = 0;
    double passInBefore = 0;
    double passOutBefore = 0;
    int at = 0;
    for (int frame = 0; frame < frames; frame++) {
      double out = loop[at];
      wave[frame] = (float) out;
      double lost = keep * ((1 - DULLNESS) * out + DULLNESS * lossBefore);
      lossBefore = out;
      double passed = allPass * lost + passInBefore - allPass * passOutBefore;
      passInBefore = lost;
      passOutBefore = passed;
      loop[at] = passed;
      at = at + 1 == line ? 0 : at + 1;
    }
    return wave;
  }

  /** The phase delay of the loss filter, in frames. */
  private static double lossDelay(double omega) {
    double sine = DULLNESS * StrictMath.sin(omega);
    double cosine = 1 - DULLNESS + DULLNESS * StrictMath.cos(omega);
    return StrictMath.atan2(sine, cosine) / omega;
  }

  private static double lossGain(double omega) {
    return StrictMath.hypot(
        1 - DULLNESS + DULLNESS * StrictMath.cos(omega), DULLNESS * StrictMath.sin(omega));
  }

  /** One period of softened noise without what the place of the pluck silences, and without DC. */
  private static double[] excitation(int line, int ratePerSecond, long seed) {
    Noise noise = new Noise(seed);
    double soften = StrictMath.exp(-2 * StrictMath.PI * SOFTENING_HZ / ratePerSecond);
    double[] soft = new double[line];
    double level = 0;
    for (int turn = 0; turn < 2; turn++) {
      Noise run = turn == 0 ? noise : new Noise(seed);
      for (int i = 0; i < line; i++) {
        level += (1 - soften) * (run.next() - level);
        soft[i] = level;
      }
    }
    int pluck = Math.max(1, (int) (line * PLUCK_PLACE));
    double[] plucked = new double[line];
    double mean = 0;
    for (int i = 0; i < line; i++) {
      plucked[i] = soft[i] - soft[Math.floorMod(i - pluck, line)];
      mean += plucked[i] / line;
    }
    for (int i = 0; i < line; i++) {
      plucked[i] -= mean;
    }
    return plucked;
  }
}
