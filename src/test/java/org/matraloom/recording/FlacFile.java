package org.matraloom.recording;

import java.io.IOException;
import java.nio.file.Path;
import net.sourceforge.javaflacencoder.EncodingConfiguration;
import net.sourceforge.javaflacencoder.FLACEncoder;
import net.sourceforge.javaflacencoder.FLACFileOutputStream;
import net.sourceforge.javaflacencoder.StreamConfiguration;

/** Writes FLAC files for tests; apart, as the program does not carry the encoder. */
final class FlacFile {

  private FlacFile() {}

  static void write(Path file, float[] sound, int bits) throws IOException {
    FLACEncoder encoder = new FLACEncoder();
    encoder.setStreamConfiguration(
        new StreamConfiguration(
            1,
            StreamConfiguration.DEFAULT_MIN_BLOCK_SIZE,
            StreamConfiguration.DEFAULT_MAX_BLOCK_SIZE,
            SoundFiles.RATE,
            bits));
    encoder.setEncodingConfiguration(new EncodingConfiguration());
    int[] samples = new int[sound.length];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (int) Math.round(sound[i] * (double) ((1L << bits - 1) - 1));
    }
    FLACFileOutputStream out = new FLACFileOutputStream(file.toString());
    try {
      encoder.setOutputStream(out);
      encoder.openFLACStream();
      encoder.addSamples(samples, samples.length);
      encoder.encodeSamples(samples.length, true);
    } finally {
      out.close();
    }
  }
}
