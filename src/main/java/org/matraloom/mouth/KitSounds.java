package org.matraloom.mouth;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.matraloom.recording.HeldRecording;
import org.matraloom.recording.Recording;
import org.matraloom.recording.Recordings;
import org.matraloom.recording.ResampledRecording;
import org.matraloom.wav.PcmFormat;
import org.matraloom.wav.WavWriter;

/** Sounds in memory, one channel, and the files they come from and go to. */
final class KitSounds {

  private static final int BLOCK_FRAMES = 16_384;
  private static final int BITS = 24;

  private KitSounds() {}

  /**
   * A recording as it is and at the rate of a kit.
   *
   * @param own the samples of the file
   * @param ownRate its rate
   * @param sound the same at {@link Kit#RATE}
   */
  record Read(float[] own, int ownRate, float[] sound) {

    private static final float FULL_SCALE = 0.985f;
    private static final int CLIPPED_RUN = 3;

    /**
     * Whether the file stands still at full scale somewhere between two frames of the kit's rate.
     */
    boolean isClipped(int from, int to) {
      int run = 0;
      int end = (int) Math.min(own.length, (long) to * ownRate / Kit.RATE);
      for (int i = Math.max(1, (int) ((long) from * ownRate / Kit.RATE)); i < end; i++) {
        boolean full = Math.abs(own[i]) >= FULL_SCALE && own[i] == own[i - 1];
        run = full ? run + 1 : 0;
        if (run >= CLIPPED_RUN) {
          return true;
        }
      }
      return false;
    }
  }

  /**
   * Reads a whole recording at one rate.
   *
   * @param longestSeconds more is refused
   * @throws KitException if it is longer
   */
  static float[] read(Path file, int ratePerSecond, int longestSeconds) throws IOException {
    try (Recording recording = Recordings.open(file)) {
      int rate = recording.ratePerSecond();
      return resampled(all(recording, (long) longestSeconds * rate, file), rate, ratePerSecond);
    }
  }

  /** Reads a recording as it is and at the rate of a kit. */
  static Read readBoth(Path file, int longestSeconds) throws IOException {
    try (Recording recording = Recordings.open(file)) {
      int rate = recording.ratePerSecond();
      float[] own = all(recording, (long) longestSeconds * rate, file);
      return new Read(own, rate, resampled(own, rate, Kit.RATE));
    }
  }

  private static float[] resampled(float[] sound, int rate, int wanted) throws IOException {
    if (rate == wanted) {
      return sound;
    }
    Recording held = new HeldRecording(sound, rate);
    float[] other = new float[(int) ((long) sound.length * wanted / rate)];
    try (ResampledRecording recording = new ResampledRecording(held, sound.length, wanted)) {
      int read = recording.read(other);
      return read == other.length ? other : Arrays.copyOf(other, Math.max(0, read));
    }
  }

  private static float[] all(Recording recording, long mostFrames, Path file) throws IOException {
    float[] sound = new float[BLOCK_FRAMES];
    float[] block = new float[BLOCK_FRAMES];
    int frames = 0;
    for (int count = recording.read(block); count > 0; count = recording.read(block)) {
      if (frames + count > mostFrames) {
        throw new KitException(
            file + " is longer than " + mostFrames / recording.ratePerSecond() + " s; cut it");
      }
      if (frames + count > sound.length) {
        sound = Arrays.copyOf(sound, 2 * sound.length);
      }
      System.arraycopy(block, 0, sound, frames, count);
      frames += count;
    }
    return Arrays.copyOf(sound, frames);
  }

  /** Writes a sample. */
  static void write(Path file, float[] sound) throws IOException {
    PcmFormat format = new PcmFormat(Kit.RATE, BITS, 1);
    try (WavWriter wave = new WavWriter(file, format, sound.length, List.of())) {
      wave.write(sound, sound.length);
      wave.finish();
    }
  }

  /** A sound as a recording, from its beginning. */
  static Recording recording(float[] sound) {
    return new HeldRecording(sound, Kit.RATE);
  }
}
