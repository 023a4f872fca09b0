package org.matraloom.recording;

import java.io.IOException;
import java.util.List;

/** A recording without some stretches of it; what follows a stretch moves up. */
public final class ShortenedRecording implements Recording {

  /**
   * A stretch of a recording.
   *
   * @param fromFrame its first frame
   * @param frames how many there are
   */
  public record LeftOut(long fromFrame, long frames) {}

  private final Recording whole;
  private final List<LeftOut> stretches;
  private long frame;

  /**
   * Leaves stretches out.
   *
   * @param whole the recording, at its beginning; closed with this one
   * @param stretches what is left out, in frames of the whole
   */
  public ShortenedRecording(Recording whole, List<LeftOut> stretches) {
    this.whole = whole;
    this.stretches = List.copyOf(stretches);
  }

  @Override
  public int ratePerSecond() {
    return whole.ratePerSecond();
  }

  @Override
  public int read(float[] block) throws IOException {
    while (true) {
      int read = whole.read(block);
      int kept = 0;
      for (int i = 0; i < read; i++) {
        block[kept] = block[i];
        kept += isLeftOut(frame + i) ? 0 : 1;
      }
      frame += read;
      if (kept > 0 || read == 0) {
        return kept;
      }
    }
  }

  private boolean isLeftOut(long at) {
    for (LeftOut stretch : stretches) {
      if (at >= stretch.fromFrame() && at - stretch.fromFrame() < stretch.frames()) {
        return true;
      }
    }
    return false;
  }

  @Override
  public void close() throws IOException {
    whole.close();
  }
}
