package org.matraloom.recording;

import java.io.IOException;
import java.nio.file.Path;

/**
 * How long and how loud a recording is.
 *
 * @param frames its length
 * @param ratePerSecond its rate
 * @param peak its largest sample, full scale at 1
 */
public record SoundExtent(long frames, int ratePerSecond, double peak) {

  private static final int BLOCK_FRAMES = 8192;

  /**
   * Reads a recording to its end.
   *
   * @param file the recording
   * @return how long and how loud it is
   * @throws IOException if it cannot be read or measured
   */
  public static SoundExtent of(Path file) throws IOException {
    try (Recording recording = Recordings.open(file)) {
      float[] block = new float[BLOCK_FRAMES];
      long frames = 0;
      float peak = 0;
      int count;
      while ((count = recording.read(block)) > 0) {
        frames += count;
        for (int i = 0; i < count; i++) {
          peak = Math.max(peak, Math.abs(block[i]));
        }
      }
      return new SoundExtent(frames, recording.ratePerSecond(), peak);
    }
  }
}
