package org.matraloom.onset;

import be.tarsos.dsp.io.TarsosDSPAudioFloatConverter;
import be.tarsos.dsp.io.TarsosDSPAudioFormat;
import be.tarsos.dsp.io.TarsosDSPAudioInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;
import org.matraloom.recording.Recording;

/**
 * Hands a recording to TarsosDSP's dispatcher as bytes, and some silence after it.
 *
 * <p>The dispatcher turns a failure of its stream into an {@link Error} without its cause, so a
 * failure is kept here and the stream ends instead; ask {@link #failure()} afterwards.
 */
final class RecordingStream implements TarsosDSPAudioInputStream {

  private static final int FLOAT_BYTES = 4;
  private static final int BLOCK_FRAMES = 8_192;

  private final Recording recording;
  private final ByteBuffer bytes =
      ByteBuffer.allocate(BLOCK_FRAMES * FLOAT_BYTES).order(ByteOrder.LITTLE_ENDIAN);
  private final float[] block = new float[BLOCK_FRAMES];
  private int silenceLeftFrames;
  private long frames;
  private IOException failure;

  /**
   * Wraps a recording.
   *
   * @param recording what is read; closing it stays with the caller
   * @param silenceFrames zeros handed on after its end
   */
  RecordingStream(Recording recording, int silenceFrames) {
    this.recording = recording;
    this.silenceLeftFrames = silenceFrames;
    bytes.limit(0);
  }

  @Override
  public int read(byte[] target, int offset, int length) {
    if (!bytes.hasRemaining() && !refill()) {
      return -1;
    }
    int count = Math.min(length, bytes.remaining());
    bytes.get(target, offset, count);
    return count;
  }

  private boolean refill() {
    int count = 0;
    try {
      count = failure == null ? recording.read(block) : 0;
    } catch (IOException broken) {
      failure = broken;
    }
    frames += count;
    bytes.clear();
    for (int i = 0; i < count; i++) {
      bytes.putFloat(block[i]);
    }
    if (count == 0) {
      int silence = Math.min(silenceLeftFrames, BLOCK_FRAMES);
      silenceLeftFrames -= silence;
      for (int i = 0; i < silence; i++) {
        bytes.putFloat(0);
      }
    }
    bytes.flip();
    return bytes.hasRemaining();
  }

  /** How many frames of the recording have been read. */
  long frames() {
    return frames;
  }

  /** What went wrong while reading. */
  Optional<IOException> failure() {
    return Optional.ofNullable(failure);
  }

  @Override
  public TarsosDSPAudioFormat getFormat() {
    float rate = recording.ratePerSecond();
    return new TarsosDSPAudioFormat(
        TarsosDSPAudioFloatConverter.PCM_FLOAT, rate, 32, 1, FLOAT_BYTES, rate, false);
  }

  @Override
  public long skip(long bytesToSkip) {
    return 0;
  }

  @Override
  public void close() {
    bytes.limit(0);
  }

  @Override
  public long getFrameLength() {
    return -1;
  }
}
