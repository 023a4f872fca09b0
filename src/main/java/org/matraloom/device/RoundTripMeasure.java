package org.matraloom.device;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Finds the clicks in a recording and judges whether their delay can be trusted.
 *
 * <p>A click is where the recording is most like it (normalised cross-correlation). Delays are in
 * frames.
 */
final class RoundTripMeasure {

  private static final double LEAST_LIKENESS = 0.6;
  private static final int FEWEST_FOUND = 18;
  private static final int EARLIEST_MS = -50;
  private static final int WIDEST_SPREAD_MS = 5;
  private static final double SILENCE_DBFS = -70;

  /**
   * What was found.
   *
   * @param delays the delay of each click that was found, in frames, ascending
   * @param trouble why they cannot be trusted; empty if they can
   */
  record Finding(List<Long> delays, String trouble) {
    Finding {
      delays = List.copyOf(delays);
    }

    long median() {
      return delays.get(delays.size() / 2);
    }

    long spread() {
      return delays.get(delays.size() - 1) - delays.get(0);
    }
  }

  private RoundTripMeasure() {}

  /**
   * Looks for the clicks.
   *
   * @param clicks what was played
   * @param recording what was recorded, one channel
   * @param offsetFrames the frame of the recording that was captured when frame 0 was played
   * @param ratePerSecond frames a second
   */
  static Finding find(
      CalibrationClicks clicks, float[] recording, long offsetFrames, int ratePerSecond) {
    double peakDb = peakDbfs(recording);
    if (peakDb < SILENCE_DBFS) {
      return new Finding(
          List.of(),
          "nothing was heard at the input; connect the output to it or hold the microphone to the"
              + " speaker, and check that neither is muted");
    }
    List<Long> delays = new ArrayList<>();
    for (int i = 0; i < CalibrationClicks.COUNT; i++) {
      long expected = clicks.frame(i) + offsetFrames;
      long from = expected + (long) EARLIEST_MS * ratePerSecond / 1000;
      long to = expected + (long) CalibrationClicks.LONGEST_DELAY_MS * ratePerSecond / 1000;
      long found = best(clicks.click(), recording, from, to);
      if (found >= 0) {
        delays.add(found - expected);
      }
    }
    Collections.sort(delays);
    return new Finding(delays, trouble(delays, ratePerSecond));
  }

  private static String trouble(List<Long> delays, int ratePerSecond) {
    if (delays.size() < FEWEST_FOUND) {
      return "only "
          + delays.size()
          + " of "
          + CalibrationClicks.COUNT
          + " clicks were heard clearly; turn the output up or the noise around down";
    }
    double spreadMs = 1000.0 * (delays.get(delays.size() - 1) - delays.get(0)) / ratePerSecond;
    return spreadMs <= WIDEST_SPREAD_MS
        ? ""
        : String.format(
            Locale.ROOT,
            "the delay changed by %.1f ms from click to click, and more than %d ms is no use; close"
                + " other programs and measure again",
            spreadMs,
            WIDEST_SPREAD_MS);
  }

  /** The place where a recording is most like a click, or -1 if it is nowhere like it. */
  private static long best(float[] click, float[] recording, long from, long to) {
    int first = (int) Math.max(0, from);
    int last = (int) Math.min(recording.length - click.length, to);
    double own = energy(click, 0, click.length);
    double likeness = LEAST_LIKENESS;
    long best = -1;
    for (int at = first; at <= last; at++) {
      double product = 0;
      for (int i = 0; i < click.length; i++) {
        product += click[i] * recording[at + i];
      }
      double other = energy(recording, at, click.length);
      if (other > 0 && product / Math.sqrt(own * other) > likeness) {
        likeness = product / Math.sqrt(own * other);
        best = at;
      }
    }
    return best;
  }

  private static double energy(float[] samples, int from, int count) {
    double sum = 0;
    for (int i = from; i < from + count; i++) {
      sum += samples[i] * samples[i];
    }
    return sum;
  }

  static double peakDbfs(float[] samples) {
    double peak = 0;
    for (float sample : samples) {
      peak = Math.max(peak, Math.abs(sample));
    }
    return 20 * Math.log10(Math.max(peak, 1e-9));
  }
}
