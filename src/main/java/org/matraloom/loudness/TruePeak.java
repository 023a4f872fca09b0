package org.matraloom.loudness;

/**
 * Measures the true peak: the highest value of the wave between the samples as well as on them.
 *
 * <p>Source: ITU-R BS.1770-4 (2015), annex 2: four times as many samples through the printed 48-tap
 * filter. The samples themselves are looked at too, since the printed filter passes them a little
 * low and no wave peaks below its own samples. The filter is used as printed at every rate.
 */
public final class TruePeak {

  private static final double[][] PHASES = {
    {
      0.0017089843750, 0.0109863281250, -0.0196533203125, 0.0332031250000,
      -0.0594482421875, 0.1373291015625, 0.9721679687500, -0.1022949218750,
      0.0476074218750, -0.0266113281250, 0.0148925781250, -0.0083007812500
    },
    {
      -0.0291748046875, 0.0292968750000, -0.0517578125000, 0.0891113281250,
      -0.1665039062500, 0.4650878906250, 0.7797851562500, -0.2003173828125,
      0.1015625000000, -0.0582275390625, 0.0330810546875, -0.0189208984375
    }
  };

  private static final int TAPS = PHASES[0].length;

  private final double[][] history;
  private int newest;
  private double peak;

  /**
   * A meter that has heard nothing.
   *
   * @param channels how many channels, at least 1
   * @throws IllegalArgumentException if there is no channel
   */
  public TruePeak(int channels) {
    if (channels < 1) {
      throw new IllegalArgumentException("a peak is measured on 1 channel or more: " + channels);
    }
    history = new double[channels][2 * TAPS];
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
    if (channels.length != history.length) {
      throw new IllegalArgumentException(
          "the meter listens to " + history.length + " channels, given " + channels.length);
    }
    for (int at = fromFrame; at < fromFrame + frames; at++) {
      newest = (newest + TAPS - 1) % TAPS;
      for (int channel = 0; channel < history.length; channel++) {
        look(history[channel], channels[channel][at]);
      }
    }
  }

  /**
   * The highest peak of any channel so far.
   *
   * @return dB relative to full scale (dBTP); negative infinity for silence
   */
  public double dbtp() {
    return 20 * StrictMath.log10(peak);
  }

  private void look(double[] last, double sample) {
    last[newest] = sample;
    last[newest + TAPS] = sample;
    peak = Math.max(peak, Math.abs(sample));
    for (double[] phase : PHASES) {
      double forward = 0;
      double mirrored = 0;
      for (int tap = 0; tap < TAPS; tap++) {
        double value = last[newest + tap];
        forward += phase[tap] * value;
        mirrored += phase[TAPS - 1 - tap] * value;
      }
      peak = Math.max(peak, Math.max(Math.abs(forward), Math.abs(mirrored)));
    }
  }
}
