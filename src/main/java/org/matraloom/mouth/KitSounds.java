package org.matraloom.mouth;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
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
   * Reads a whole recording at one rate.
   *
   * @param longestSeconds more is refused
   * @throws KitException if it is longer
   */
  static float[] read(Path file, int ratePerSecond, int longestSeconds) throws IOException {
    float[] sound;
    int rate;
    try (Recording recording = Recordings.open(file)) {
      rate = recording.ratePerSecond();
      sound = all(recording, (long) longestSeconds * rate, file);
    }
    if (rate == ratePerSecond) {
      return sound;
    }
    Held held = new Held(sound, rate);
    int frames = (int) ((long) sound.length * ratePerSecond / rate);
    float[] resampled = new float[frames];
    try (ResampledRecording other = new ResampledRecording(held, sound.length, ratePerSecond)) {
      int read = other.read(resampled);
      return read == frames ? resampled : Arrays.copyOf(resampled, Math.max(0, read));
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
    return new Held(sound, Kit.RATE);
  }

  private static final class Held implements Recording {
    private final float[] sound;
    private final int ratePerSecond;
    private int given;

    Held(float[] sound, int ratePerSecond) {
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
}
