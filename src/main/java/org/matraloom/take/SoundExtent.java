package org.matraloom.take;

import java.io.IOException;
import java.nio.file.Path;

/**
 * How long and how loud a recording is.
 *
 * @param frames its length
 * @param ratePerSecond its rate
 * @param peak its largest sample, full scale at 1
 */
record SoundExtent(long frames, int ratePerSecond, double peak) {

  private static final int BLOCK_FRAMES = 8192;

  static SoundExtent of(Path file) throws IOException {
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
