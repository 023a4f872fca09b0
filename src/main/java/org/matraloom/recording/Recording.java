package org.matraloom.recording;

import java.io.Closeable;
import java.io.IOException;

/**
 * The sound of a recording, read once from its beginning, all channels mixed to one.
 *
 * <p>Only a block at a time is held, so an hour costs no more memory than a second. Sample 0 is the
 * first sample that was recorded: delays and paddings that a codec adds are taken away.
 */
public interface Recording extends Closeable {

  /**
   * The sample rate.
   *
   * @return frames a second
   */
  int ratePerSecond();

  /**
   * Reads the next frames.
   *
   * @param block where samples go from its beginning, full scale at 1, channels averaged
   * @return how many were read, at least 1; 0 at the end
   * @throws RecordingException if the file is damaged
   * @throws IOException if the disk fails
   */
  int read(float[] block) throws IOException;
}
