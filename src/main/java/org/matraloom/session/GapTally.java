package org.matraloom.session;

import java.util.Locale;
import org.matraloom.device.DeviceGaps;
import org.matraloom.time.FrameClock;

/**
 * How often the device ran dry, and what that made of the sound.
 *
 * @param underruns how often
 * @param silentSeconds how much silence was put in, as far as it is known
 */
record GapTally(int underruns, double silentSeconds) {

  static GapTally of(DeviceGaps gaps, int ratePerSecond) {
    return new GapTally(gaps.count(), FrameClock.seconds(gaps.silentFrames(), ratePerSecond));
  }

  /** The count, and the silence if there is any. */
  String words() {
    return silentSeconds > 0
        ? String.format(Locale.ROOT, "%d, %.2f s of silence put in", underruns, silentSeconds)
        : Integer.toString(underruns);
  }
}
