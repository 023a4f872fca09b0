package org.matraloom.device;

import java.io.IOException;

/** Where samples are captured, at the pace of a device. */
public interface AudioIn extends AutoCloseable {

  /**
   * Takes captured frames; waits until there are some.
   *
   * @param pcm where they go, in the format the device was opened with
   * @param offset where to begin, in bytes
   * @param length how many bytes are wanted at most, whole frames
   * @return how many bytes were taken, whole frames, at least one
   * @throws IOException if the device has gone or gives no more
   */
  int read(byte[] pcm, int offset, int length) throws IOException;

  /**
   * How many frames the device has captured, those not yet taken included; may be asked from any
   * thread.
   *
   * @return frames since the device was opened
   */
  long capturedFrames();

  /**
   * How often frames were lost because they were not taken in time; may be asked from any thread.
   *
   * @return overruns since the device was opened
   */
  int overruns();

  @Override
  void close();
}
