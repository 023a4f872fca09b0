package org.matraloom.session;

import org.matraloom.staircase.StairStep;
import org.matraloom.wav.PcmFormat;

/** Tells a decision without words: two taps for up, one low tone for down, nothing for the same. */
public final class DecisionSound {

  private static final double TAP_HZ = 880;
  private static final double LOW_HZ = 196;
  private static final double PEAK = 0.2;
  private static final double SECONDS = 0.45;
  private static final double SECOND_TAP = 0.18;
  private static final double TAP_DECAY = 0.03;
  private static final double LOW_DECAY = 0.12;

  private DecisionSound() {}

  /**
   * The sound of a decision.
   *
   * @param move the decision
   * @param format 16 bits, one or two channels
   * @return the samples as they go to a device; none for the same again
   */
  public static byte[] of(StairStep.Move move, PcmFormat format) {
    if (move == StairStep.Move.SAME) {
      return new byte[0];
    }
    int frames = (int) (SECONDS * format.ratePerSecond());
    int channels = format.channels();
    byte[] pcm = new byte[frames * format.bytesPerFrame()];
    for (int frame = 0; frame < frames; frame++) {
      double seconds = (double) frame / format.ratePerSecond();
      double sound =
          move == StairStep.Move.UP
              ? tone(seconds, TAP_HZ, TAP_DECAY) + tone(seconds - SECOND_TAP, TAP_HZ, TAP_DECAY)
              : tone(seconds, LOW_HZ, LOW_DECAY);
      short sample = (short) Math.round(PEAK * Short.MAX_VALUE * sound);
      for (int channel = 0; channel < channels; channel++) {
        int at = frame * format.bytesPerFrame() + 2 * channel;
        pcm[at] = (byte) sample;
        pcm[at + 1] = (byte) (sample >> 8);
      }
    }
    return pcm;
  }

  private static double tone(double seconds, double hertz, double decay) {
    return seconds < 0 ? 0 : Math.sin(2 * Math.PI * hertz * seconds) * Math.exp(-seconds / decay);
  }
}
