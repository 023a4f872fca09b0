package org.matraloom.recording;

/** Samples in memory, as a recording. */
public final class HeldRecording implements Recording {

  private final float[] sound;
  private final int ratePerSecond;
  private int given;

  /**
   * A recording that begins at its first sample.
   *
   * @param sound one channel, full scale at 1; not copied
   * @param ratePerSecond frames a second
   */
  public HeldRecording(float[] sound, int ratePerSecond) {
    this.sound = sound;
    this.ratePerSecond = ratePerSecond;
  }

  @Override
  public int ratePerSecond() {
    return ratePerSecond;
  }

  @Override
  public int read(float[] block) {
    int count = Math.min(block.length, sound.length - given);
    System.arraycopy(sound, given, block, 0, count);
    given += count;
    return count;
  }

  @Override
  public void close() {}
}
