package org.matraloom.device;

import java.io.IOException;

/**
 * A microphone that hears what a device plays, mono, a fixed number of frames late, and silence
 * when the device has been drained.
 */
public final class FakeIn implements AudioIn {

  private static final int BLOCK = 480;

  private final FakeOut out;
  private final int delayFrames;
  private volatile long read;
  private volatile IOException trouble;
  private volatile boolean closed;

  public FakeIn(FakeOut out, int delayFrames) {
    this.out = out;
    this.delayFrames = delayFrames;
    out.keepPaceWith(() -> closed ? Long.MAX_VALUE / 2 : read);
  }

  public void breakWith(IOException failure) {
    trouble = failure;
  }

  @Override
  public int read(byte[] pcm, int offset, int length) throws IOException {
    pause();
    refuse();
    while (capturedFrames() == read) {
      pause();
      refuse();
    }
    int frames = (int) Math.min(length / 2, capturedFrames() - read);
    for (int i = 0; i < frames; i++) {
      short sample = out.sampleAt(read + i - delayFrames);
      pcm[offset + 2 * i] = (byte) sample;
      pcm[offset + 2 * i + 1] = (byte) (sample >> 8);
    }
    read += frames;
    return 2 * frames;
  }

  private void refuse() throws IOException {
    if (trouble != null) {
      throw trouble;
    }
    if (closed) {
      throw new IOException("closed");
    }
  }

  private static void pause() {
    try {
      Thread.sleep(1);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  @Override
  public long capturedFrames() {
    return out.isDrained() ? read + BLOCK : out.playedFrames();
  }

  @Override
  public int overruns() {
    return 0;
  }

  @Override
  public void close() {
    closed = true;
  }
}
