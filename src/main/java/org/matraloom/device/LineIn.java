package org.matraloom.device;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import javax.sound.sampled.TargetDataLine;

/** A Java Sound line to record from. */
final class LineIn implements AudioIn {

  /** What the line is asked to hold at most, in milliseconds. */
  static final int BUFFER_MS = 1000;

  private static final long WAIT_NANOS = TimeUnit.MILLISECONDS.toNanos(2);
  private static final long LONGEST_STALL_NANOS = TimeUnit.SECONDS.toNanos(3);

  private final TargetDataLine line;
  private final String name;
  private final int bytesPerFrame;
  private final FrameCounter captured;

  private long readBytes;
  private volatile int overruns;

  LineIn(TargetDataLine line, String name) {
    this.line = line;
    this.name = name;
    this.bytesPerFrame = line.getFormat().getFrameSize();
    this.captured = new FrameCounter(line.getFormat().getFrameRate());
    line.start();
  }

  @Override
  public int read(byte[] pcm, int offset, int length) throws IOException {
    int available = waitForFrames();
    if (available >= line.getBufferSize()) {
      overruns++;
      captured.pause();
    }
    int taken = line.read(pcm, offset, Math.min(length, available));
    if (taken < bytesPerFrame) {
      throw gone();
    }
    readBytes += taken;
    report();
    return taken;
  }

  private void report() {
    long frames = (readBytes + line.available()) / bytesPerFrame;
    captured.report(frames, Long.MAX_VALUE, System.nanoTime());
  }

  private int waitForFrames() throws IOException {
    long since = System.nanoTime();
    while (true) {
      int available = line.available() / bytesPerFrame * bytesPerFrame;
      if (available >= bytesPerFrame) {
        return available;
      }
      if (!line.isOpen() || System.nanoTime() - since > LONGEST_STALL_NANOS) {
        throw gone();
      }
      LockSupport.parkNanos(WAIT_NANOS);
    }
  }

  private DeviceException gone() {
    return new DeviceException(
        name + " gives no more sound, as if it had been unplugged",
        DeviceAdvice.to(DeviceAdvice.Kind.PLUG_IN_INPUT));
  }

  @Override
  public long capturedFrames() {
    return captured.frames(System.nanoTime());
  }

  @Override
  public int overruns() {
    return overruns;
  }

  @Override
  public void close() {
    line.close();
  }
}
