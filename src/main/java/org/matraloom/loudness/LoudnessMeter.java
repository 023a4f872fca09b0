package org.matraloom.loudness;

import java.util.Arrays;

/**
 * Measures loudness: momentary (400 ms), short-term (3 s) and integrated with both gates.
 *
 * <p>Source: ITU-R BS.1770-4 (2015), annex 1, and EBU Tech 3341 (2023) for the two sliding windows.
 * The windows move in steps of 100 ms, each placed by rounding its absolute position, so the result
 * does not depend on how the sound is cut into blocks. Memory grows by 8 bytes for each 100 ms.
 */
public final class LoudnessMeter {

  private static final double OFFSET_DB = -0.691;
  private static final double ABSOLUTE_GATE_LUFS = -70;
  private static final double RELATIVE_GATE_LU = -10;
  private static final int STEPS_PER_SECOND = 10;
  private static final int MOMENTARY_STEPS = 4;
  private static final int SHORT_TERM_STEPS = 30;

  /** Gains of left, right, centre, left surround and right surround (BS.1770-4, table 3). */
  private static final double[] FIVE_CHANNEL_GAINS = {1, 1, 1, 1.41, 1.41};

  private final int ratePerSecond;
  private final double[] gains;
  private final KWeighting[] filters;
  private final double[] energyOfStep = new double[SHORT_TERM_STEPS];
  private final long[] framesOfStep = new long[SHORT_TERM_STEPS];
  private double[] blockPowers = new double[64];
  private int blocks;
  private long steps;
  private long frame;
  private long stepEndFrame;
  private double stepEnergy;
  private double maxMomentary = Double.NEGATIVE_INFINITY;
  private double maxShortTerm = Double.NEGATIVE_INFINITY;

  private LoudnessMeter(int ratePerSecond, double... gains) {
    this.ratePerSecond = ratePerSecond;
    this.gains = gains;
    filters = new KWeighting[gains.length];
    Arrays.setAll(filters, channel -> new KWeighting(ratePerSecond));
    stepEndFrame = endOfStep(0);
  }

  /**
   * A meter for sound of one to five channels.
   *
   * <p>One and two channels count in full; five are left, right, centre and the two surrounds,
   * which count 1.41 times.
   *
   * @param ratePerSecond frames a second, 8000 to 192000
   * @param channels 1, 2 or 5
   * @return a meter that has heard nothing
   * @throws IllegalArgumentException for another rate or number of channels
   */
  public static LoudnessMeter of(int ratePerSecond, int channels) {
    if (ratePerSecond < 8_000 || ratePerSecond > 192_000) {
      throw new IllegalArgumentException(
          "sample rate " + ratePerSecond + " is outside 8000 to 192000 frames a second");
    }
    if (channels != 1 && channels != 2 && channels != FIVE_CHANNEL_GAINS.length) {
      throw new IllegalArgumentException(
          "loudness is measured on 1, 2 or 5 channels, given " + channels);
    }
    return new LoudnessMeter(ratePerSecond, Arrays.copyOf(FIVE_CHANNEL_GAINS, channels));
  }

  /**
   * Listens to a block.
   *
   * @param channels one array a channel, full scale at 1
   * @param fromFrame the first frame of the arrays to take
   * @param frames how many frames to take
   * @throws IllegalArgumentException if the number of channels is not the meter's
   */
  public void add(float[][] channels, int fromFrame, int frames) {
    if (channels.length != gains.length) {
      throw new IllegalArgumentException(
          "the meter listens to " + gains.length + " channels, given " + channels.length);
    }
    for (int at = fromFrame; at < fromFrame + frames; at++) {
      for (int channel = 0; channel < gains.length; channel++) {
        double weighted = filters[channel].filter(channels[channel][at]);
        stepEnergy += gains[channel] * weighted * weighted;
      }
      frame++;
      if (frame == stepEndFrame) {
        endStep();
      }
    }
  }

  /**
   * The loudness of the last 400 ms.
   *
   * @return LUFS; negative infinity for silence or before 400 ms were heard
   */
  public double momentaryLufs() {
    return lufs(power(MOMENTARY_STEPS));
  }

  /**
   * The loudness of the last 3 s.
   *
   * @return LUFS; negative infinity for silence or before 3 s were heard
   */
  public double shortTermLufs() {
    return lufs(power(SHORT_TERM_STEPS));
  }

  /**
   * The highest momentary loudness so far.
   *
   * @return LUFS; negative infinity if there was none
   */
  public double maxMomentaryLufs() {
    return maxMomentary;
  }

  /**
   * The highest short-term loudness so far.
   *
   * @return LUFS; negative infinity if there was none
   */
  public double maxShortTermLufs() {
    return maxShortTerm;
  }

  /**
   * The loudness of everything heard, without what lies under the gates.
   *
   * <p>Blocks of 400 ms that overlap by three quarters count if they lie above -70 LUFS and not
   * more than 10 LU under the mean of those that do. An incomplete last block does not count.
   *
   * @return LUFS; negative infinity if nothing passes the gates
   */
  public double integratedLufs() {
    double ungated = meanAbove(powerAt(ABSOLUTE_GATE_LUFS));
    if (ungated == 0) {
      return Double.NEGATIVE_INFINITY;
    }
    double relative = powerAt(lufs(ungated) + RELATIVE_GATE_LU);
    return lufs(meanAbove(Math.max(relative, powerAt(ABSOLUTE_GATE_LUFS))));
  }

  private void endStep() {
    int slot = (int) (steps % SHORT_TERM_STEPS);
    energyOfStep[slot] = stepEnergy;
    framesOfStep[slot] = frame - (steps == 0 ? 0 : endOfStep(steps - 1));
    stepEnergy = 0;
    for (KWeighting filter : filters) {
      filter.rest();
    }
    steps++;
    stepEndFrame = endOfStep(steps);
    if (steps >= MOMENTARY_STEPS) {
      double power = power(MOMENTARY_STEPS);
      if (blocks == blockPowers.length) {
        blockPowers = Arrays.copyOf(blockPowers, blocks * 2);
      }
      blockPowers[blocks++] = power;
      maxMomentary = Math.max(maxMomentary, lufs(power));
      maxShortTerm = Math.max(maxShortTerm, shortTermLufs());
    }
  }

  private long endOfStep(long step) {
    return ((step + 1) * ratePerSecond + STEPS_PER_SECOND / 2) / STEPS_PER_SECOND;
  }

  private double power(int window) {
    if (steps < window) {
      return 0;
    }
    double energy = 0;
    long frames = 0;
    for (long step = steps - window; step < steps; step++) {
      int slot = (int) (step % SHORT_TERM_STEPS);
      energy += energyOfStep[slot];
      frames += framesOfStep[slot];
    }
    return energy / frames;
  }

  private double meanAbove(double gatePower) {
    double sum = 0;
    int count = 0;
    for (int block = 0; block < blocks; block++) {
      if (blockPowers[block] > gatePower) {
        sum += blockPowers[block];
        count++;
      }
    }
    return count == 0 ? 0 : sum / count;
  }

  private static double lufs(double power) {
    return power == 0 ? Double.NEGATIVE_INFINITY : OFFSET_DB + 10 * StrictMath.log10(power);
  }

  private static double powerAt(double lufs) {
    return StrictMath.pow(10, (lufs - OFFSET_DB) / 10);
  }
}
