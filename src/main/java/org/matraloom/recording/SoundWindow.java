package org.matraloom.recording;

import java.io.IOException;
import java.util.Arrays;

/** The last second or so of a recording that is read forwards, by frame. */
public final class SoundWindow {

  private static final int BLOCK_FRAMES = 4096;

  private final Recording source;
  private final float[] block = new float[BLOCK_FRAMES];
  private final float[] ring;
  private long read;
  private boolean ended;

  /**
   * Opens a window at the beginning of a recording.
   *
   * @param source read forwards; closed by others
   */
  public SoundWindow(Recording source) {
    this.source = source;
    this.ring = new float[2 * Integer.highestOneBit(source.ratePerSecond() + BLOCK_FRAMES)];
  }

  /**
   * Copies frames; before the beginning and after the end there is silence.
   *
   * @param from the first frame, at most a second before the last one that was asked for
   * @param target where they go, all of it filled
   */
  public void copy(long from, float[] target) throws IOException {
    while (!ended && read < from + target.length) {
      readBlock();
    }
    Arrays.fill(target, 0);
    long first = Math.max(Math.max(0, read - ring.length), from);
    long end = Math.min(read, from + target.length);
    for (long frame = first; frame < end; frame++) {
      target[(int) (frame - from)] = ring[(int) (frame & (ring.length - 1))];
    }
  }

  private void readBlock() throws IOException {
    int count = source.read(block);
    ended = count <= 0;
    for (int i = 0; i < count; i++) {
      ring[(int) (read & (ring.length - 1))] = block[i];
      read++;
    }
  }
}
