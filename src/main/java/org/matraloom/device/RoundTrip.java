package org.matraloom.device;

/**
 * The measured delay from what is played to what is recorded, for one pair of devices.
 *
 * @param output the name of the device that played
 * @param input the name of the device that recorded
 * @param ratePerSecond frames a second
 * @param frames the delay in frames, the median of the clicks
 * @param spreadFrames the longest delay less the shortest, in frames
 */
public record RoundTrip(
    String output, String input, int ratePerSecond, long frames, long spreadFrames) {

  /**
   * The delay.
   *
   * @return milliseconds
   */
  public double ms() {
    return 1000.0 * frames / ratePerSecond;
  }

  /**
   * How much the delay varied.
   *
   * @return milliseconds
   */
  public double spreadMs() {
    return 1000.0 * spreadFrames / ratePerSecond;
  }

  boolean isOf(String out, String in, int rate) {
    return output.equals(out) && input.equals(in) && ratePerSecond == rate;
  }
}
