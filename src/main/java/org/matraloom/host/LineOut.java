package org.matraloom.host;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import javax.sound.sampled.SourceDataLine;
import org.matraloom.sound.AudioOut;

/**
 * A Java Sound line to play on.
 *
 * <p>The line is opened with a long buffer that is kept only partly full, so that a key is soon
 * heard. Each time the device runs dry it is filled half as much again. It is started only when it
 * has been filled: a start of an empty line makes the ALSA plug-in for PulseAudio tell twice the
 * room it has, and a start with too little runs dry at once.
 */
final class LineOut implements AudioOut {

  /** What the line is asked to hold at most, in milliseconds. */
  static final int BUFFER_MS = 500;

  private static final int FIRST_FILL_MS = 120;

  /** A device with less than this left is taken to have run dry. */
  private static final int DRY_MS = 1;

  private static final long SHORTEST_WAIT_NANOS = TimeUnit.MILLISECONDS.toNanos(1);
  private static final long LONGEST_STALL_NANOS = TimeUnit.MILLISECONDS.toNanos(1500);

  private final SourceDataLine line;
  private final String name;
  private final int bytesPerFrame;
  private final double nanosPerByte;
  private final long dryBytes;

  private final long capacity;
  private long fill;
  private long writtenBytes;
  private long startedBytes;
  private boolean running;
  private volatile long playedFrames;
  private volatile int underruns;

  LineOut(SourceDataLine line, String name) {
    this.line = line;
    this.name = name;
    this.bytesPerFrame = line.getFormat().getFrameSize();
    double bytesPerSecond = line.getFormat().getFrameRate() * bytesPerFrame;
    this.nanosPerByte = TimeUnit.SECONDS.toNanos(1) / bytesPerSecond;
    this.capacity = line.getBufferSize();
    this.fill = Math.min(capacity, (long) (bytesPerSecond * FIRST_FILL_MS / 1000));
    this.dryBytes = (long) (bytesPerSecond * DRY_MS / 1000);
  }

  @Override
  public void write(byte[] pcm, int offset, int length) throws IOException {
    noteUnderrun();
    waitUntilQueued(Math.max(0, fill - length));
    int taken = line.write(pcm, offset, length);
    writtenBytes += taken;
    if (taken < length) {
      throw gone();
    }
    if (!running && writtenBytes - startedBytes + length > fill) {
      start();
    }
    queuedBytes();
  }

  private void start() {
    line.start();
    running = true;
  }

  /** Some systems keep a little of the queue to themselves, so the end is known by time as well. */
  @Override
  public void drain() {
    if (!running && writtenBytes > startedBytes) {
      start();
    }
    long limit = System.nanoTime() + (long) (queuedBytes() * nanosPerByte);
    while (running && queuedBytes() > dryBytes && System.nanoTime() < limit) {
      LockSupport.parkNanos(SHORTEST_WAIT_NANOS);
    }
    line.stop();
    running = false;
    startedBytes = writtenBytes;
    playedFrames = writtenBytes / bytesPerFrame;
  }

  private void noteUnderrun() {
    if (running && queuedBytes() <= dryBytes) {
      underruns++;
      fill = Math.min(capacity, fill + fill / 2);
    }
  }

  /** Waits as long as the device makes progress. */
  private void waitUntilQueued(long mostBytes) throws IOException {
    long before = Long.MAX_VALUE;
    long since = System.nanoTime();
    while (running) {
      long queued = queuedBytes();
      if (queued <= mostBytes) {
        return;
      }
      long now = System.nanoTime();
      if (queued < before) {
        before = queued;
        since = now;
      } else if (now - since > LONGEST_STALL_NANOS || !line.isOpen()) {
        throw gone();
      }
      long ahead = (long) ((queued - mostBytes) * nanosPerByte / 2);
      LockSupport.parkNanos(Math.max(SHORTEST_WAIT_NANOS, ahead));
    }
  }

  private long queuedBytes() {
    long queued = Math.max(0, Math.min(writtenBytes, capacity - line.available()));
    playedFrames = Math.max(playedFrames, (writtenBytes - queued) / bytesPerFrame);
    return queued;
  }

  private DeviceException gone() {
    return new DeviceException(
        name
            + " takes no more sound, as if it had been unplugged; plug it in or choose another"
            + " device with --device, and start again");
  }

  @Override
  public long playedFrames() {
    return playedFrames;
  }

  @Override
  public int underruns() {
    return underruns;
  }

  @Override
  public void close() {
    line.close();
  }
}
