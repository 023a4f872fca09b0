package org.matraloom.prompt;

import java.util.Arrays;

/** How loud stretches of a recording are: its power in blocks of 20 ms, and where it is clipped. */
final class StretchLevel {

  private static final int BLOCKS_PER_SECOND = 50;
  private static final float FULL_SCALE = 0.985f;
  private static final int CLIPPED_RUN = 3;
  private static final double SILENCE_DB = -120;

  private final float[] sound;
  private final int rate;

  StretchLevel(float[] sound, int ratePerSecond) {
    this.sound = sound;
    this.rate = ratePerSecond;
  }

  /**
   * The level that a share of the blocks of a stretch do not exceed.
   *
   * @param share 0 to 1
   * @return dB of full scale; -120 for a stretch without blocks
   */
  double levelDb(double fromSeconds, double toSeconds, double share) {
    double[] blocks = blocksDb(fromSeconds, toSeconds);
    Arrays.sort(blocks);
    return blocks.length == 0
        ? SILENCE_DB
        : blocks[(int) Math.min(blocks.length - 1, share * blocks.length)];
  }

  /** The root of the mean square of each block of a stretch, in dB of full scale. */
  double[] blocksDb(double fromSeconds, double toSeconds) {
    int size = rate / BLOCKS_PER_SECOND;
    int from = Math.max(0, (int) (fromSeconds * rate));
    int to = Math.min(sound.length, (int) (toSeconds * rate));
    double[] blocks = new double[Math.max(0, (to - from) / size)];
    for (int block = 0; block < blocks.length; block++) {
      double sum = 0;
      for (int i = from + block * size; i < from + (block + 1) * size; i++) {
        sum += sound[i] * sound[i];
      }
      blocks[block] = Math.max(SILENCE_DB, 10 * Math.log10(sum / size + 1e-14));
    }
    return blocks;
  }

  /** Whether the sound stands still at full scale somewhere in a stretch. */
  boolean isClipped(double fromSeconds, double toSeconds) {
    int run = 0;
    int to = Math.min(sound.length, (int) (toSeconds * rate));
    for (int i = Math.max(1, (int) (fromSeconds * rate)); i < to; i++) {
      boolean full = Math.abs(sound[i]) >= FULL_SCALE && sound[i] == sound[i - 1];
      run = full ? run + 1 : 0;
      if (run >= CLIPPED_RUN - 1) {
        return true;
      }
    }
    return false;
  }

  /**
   * How long a room would ring by 60 dB, from how fast the sound falls after what was said last in
   * a stretch: six times the time from 15 to 25 dB under the level (as in ISO 3382-2, there from 5
   * dB on). A nasal that is held after a vowel lies above that. The end of the voice itself is in
   * it, so this is no less than the room's.
   *
   * @return seconds; 0 if it does not fall so far
   */
  double ringSeconds(double fromSeconds, double toSeconds) {
    double[] blocks = blocksDb(fromSeconds, toSeconds);
    double top = Arrays.stream(blocks).max().orElse(SILENCE_DB);
    int begin = blocks.length;
    while (begin > 0 && blocks[begin - 1] < top - 15) {
      begin--;
    }
    for (int at = begin; at < blocks.length; at++) {
      if (blocks[at] < top - 25) {
        return 6.0 * (at - begin) / BLOCKS_PER_SECOND;
      }
    }
    return 0;
  }
}
