package org.matraloom.loudness;

import java.io.IOException;
import java.nio.file.Path;
import org.matraloom.wav.WavReader;

/**
 * How loud a sound is and how high it peaks.
 *
 * @param lufs integrated loudness in LUFS by ITU-R BS.1770-4; negative infinity for silence
 * @param dbtp the true peak in dB relative to full scale
 */
public record Levels(double lufs, double dbtp) {

  private static final int BLOCK_FRAMES = 8192;

  /**
   * Measures a WAVE file.
   *
   * @param file one or two channels
   * @return its levels
   * @throws IOException if it cannot be read
   */
  public static Levels of(Path file) throws IOException {
    try (WavReader reader = new WavReader(file)) {
      Listener listener = new Listener(reader.ratePerSecond(), reader.channels());
      float[] block = new float[BLOCK_FRAMES * reader.channels()];
      int frames;
      while ((frames = reader.read(block, BLOCK_FRAMES)) > 0) {
        listener.add(block, frames);
      }
      return listener.levels();
    }
  }

  /** Measures interleaved blocks. */
  static final class Listener {
    private final LoudnessMeter loudness;
    private final TruePeak peak;
    private final float[][] channels;

    Listener(int ratePerSecond, int channels) {
      this.loudness = LoudnessMeter.of(ratePerSecond, channels);
      this.peak = new TruePeak(channels);
      this.channels = new float[channels][BLOCK_FRAMES];
    }

    void add(float[] block, int frames) {
      for (int frame = 0; frame < frames; frame++) {
        for (int channel = 0; channel < channels.length; channel++) {
          channels[channel][frame] = block[frame * channels.length + channel];
        }
      }
      loudness.add(channels, 0, frames);
      peak.add(channels, 0, frames);
    }

    Levels levels() {
      return new Levels(loudness.integratedLufs(), peak.dbtp());
    }
  }
}
