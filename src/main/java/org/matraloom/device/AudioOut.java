package org.matraloom.device;

import java.io.IOException;

/**
 * Where samples are heard, at the pace of a device; its pace is the clock of everything live.
 *
 * <p>{@link #write} is called from a thread that must keep up with the device. Neither side of the
 * call may allocate memory, wait for another thread, log or touch a file; waiting for the device is
 * what the call is for.
 */
public interface AudioOut extends AutoCloseable {

  /**
   * Hands frames over; waits while the device has enough of them.
   *
   * @param pcm whole frames in the format the device was opened with
   * @param offset where they begin, in bytes
   * @param length how many bytes
   * @throws IOException if the device has gone or takes no more
   */
  void write(byte[] pcm, int offset, int length) throws IOException;

  /**
   * Waits until all that was handed over has been heard; the quiet after it is no underrun.
   *
   * @throws IOException if the device has gone
   */
  void drain() throws IOException;

  /**
   * How many frames have been heard since the device was opened; may be asked from any thread.
   *
   * @return frames, never more than were handed over, never less than at the call before
   */
  long playedFrames();

  /**
   * The silences that the device put in because it had nothing to play while more was to come; may
   * be asked from any thread.
   *
   * @return those since the device was opened, the same object each time
   */
  DeviceGaps gaps();

  @Override
  void close();
}
