package org.matraloom.device;

/** The clicks of a calibration for somebody who plays and records them on a clock of their own. */
public final class ClickRecording {

  private ClickRecording() {}

  /**
   * What is to be played.
   *
   * @param ratePerSecond frames a second
   * @return the clicks, one channel, with quiet around them
   */
  public static float[] clicks(int ratePerSecond) {
    return new CalibrationClicks(ratePerSecond).samples();
  }

  /**
   * Finds the clicks in what was recorded.
   *
   * @param recording one channel
   * @param offsetFrames the frame of the recording that was captured when frame 0 was played
   * @param ratePerSecond frames a second
   * @param output the name of what played
   * @param input the name of what recorded
   * @return what was measured
   * @throws DeviceException if the delay cannot be trusted; the message says why
   */
  public static RoundTrip find(
      float[] recording, long offsetFrames, int ratePerSecond, String output, String input)
      throws DeviceException {
    RoundTripMeasure.Finding found =
        RoundTripMeasure.find(
            new CalibrationClicks(ratePerSecond), recording, offsetFrames, ratePerSecond);
    if (!found.trouble().isEmpty()) {
      throw new DeviceException("the round trip is not stored: " + found.trouble());
    }
    return new RoundTrip(output, input, ratePerSecond, found.median(), found.spread());
  }
}
