package org.matraloom.recording;

import java.io.IOException;
import java.nio.file.Path;

/**
 * What recordings of compressed sound share: a store of decoded samples, the delay of the codec
 * taken off the front and its padding off the end.
 */
abstract class CodecRecording implements Recording {

  private static final float SHORT_SCALE = 1f / 32_768;

  private final Path file;
  private float[] store = new float[8_192];
  private int from;
  private int to;
  private long skipFrames;
  private long framesLeft = Long.MAX_VALUE;
  private long readFrames;

  CodecRecording(Path file) {
    this.file = file;
  }

  /**
   * Decodes the next packet and hands its samples to one of the {@code put} methods.
   *
   * @return false at the end of the file
   */
  abstract boolean decodePacket() throws IOException;

  /** Leaves out samples at the beginning, then ends after so many. */
  final void keep(long skip, long frames) {
    skipFrames = skip;
    framesLeft = Math.max(0, frames);
  }

  final void requireRate(double ratePerSecond) throws RecordingException {
    if (!(ratePerSecond >= SampleRates.LOWEST && ratePerSecond <= SampleRates.HIGHEST)) {
      throw fault(SampleRates.refusal(ratePerSecond));
    }
  }

  final RecordingException fault(String fault) {
    return new RecordingException(file, fault);
  }

  final RecordingException damage(Exception cause) {
    String where =
        readFrames == 0
            ? "near its beginning"
            : "about " + readFrames / ratePerSecond() + " s after its beginning";
    return new RecordingException(file, "is damaged " + where, cause);
  }

  /** Makes room for more samples and tells where to put them. */
  private int room(int frames) {
    if (from == to) {
      from = 0;
      to = 0;
    }
    if (to + frames > store.length) {
      float[] larger = new float[to + frames];
      System.arraycopy(store, 0, larger, 0, to);
      store = larger;
    }
    int at = to;
    to += frames;
    return at;
  }

  final void putInterleaved(short[] samples, int frames, int channels) {
    int at = room(frames);
    for (int i = 0; i < frames; i++) {
      int sum = 0;
      for (int c = 0; c < channels; c++) {
        sum += samples[i * channels + c];
      }
      store[at + i] = sum * SHORT_SCALE / channels;
    }
  }

  /** Takes channel arrays; full scale is 1 after multiplying by {@code scale}. */
  final void putPlanar(float[][] channels, int[] starts, int frames, float scale) {
    int at = room(frames);
    for (int i = 0; i < frames; i++) {
      float sum = 0;
      for (int c = 0; c < channels.length; c++) {
        sum += channels[c][starts[c] + i];
      }
      float sample = sum * scale / channels.length;
      store[at + i] = Float.isFinite(sample) ? sample : 0;
    }
  }

  @Override
  public final int read(float[] block) throws IOException {
    if (framesLeft == 0) {
      return 0;
    }
    try {
      do {
        long skipped = Math.min(skipFrames, to - from);
        from += (int) skipped;
        skipFrames -= skipped;
      } while (from == to && decodePacket());
    } catch (RecordingException known) {
      throw known;
    } catch (RuntimeException | LinkageError broken) {
      throw damage(new IOException(broken));
    }
    int count = (int) Math.min(Math.min(block.length, to - from), framesLeft);
    System.arraycopy(store, from, block, 0, count);
    from += count;
    framesLeft -= count;
    readFrames += count;
    return count;
  }
}
