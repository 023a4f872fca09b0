package org.matraloom.device;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import javax.sound.sampled.SourceDataLine;

/**
 * A Java Sound line to play on.
 *
 * <p>The line is opened with a long buffer that is kept only partly full, so that a key is soon
 * heard. Each time the device runs dry it is filled half as much again.
 *
 * <p>A device that a busy machine keeps waiting tells nothing for a while and refuses nothing; one
 * that has gone tells that it is empty and refuses whatever it is given.
 *
 * <p>Seen with the ALSA plug-in for PulseAudio: a line that is started empty, stopped or flushed
 * tells twice the room it has from then on, so it is started once it has been filled and then left
 * running; the last 20 ms of a queue may never be told as heard; and a line that has run dry tells
 * for a moment that it is full, and may refuse one write.
 */
final class LineOut implements AudioOut {

  /** What the line is asked to hold at most, in milliseconds. */
  static final int BUFFER_MS = 1500;

  /** A device with less than this left is taken to have run dry. */
  private static final int DRY_MS = 1;

  /** So much of a queue may never be told as heard. */
  private static final int UNTOLD_MS = 25;

  private static final long SHORTEST_WAIT_NANOS = TimeUnit.MILLISECONDS.toNanos(1);
  private static final long LONGEST_WAIT_NANOS = TimeUnit.MILLISECONDS.toNanos(2);

  /** So long after it must have run dry, a device has, whatever it tells. */
  private static final long LATE_NANOS = TimeUnit.MILLISECONDS.toNanos(50);

  /** A device that refuses for so long, and so often, has gone. */
  private static final long LONGEST_REFUSAL_NANOS = TimeUnit.MILLISECONDS.toNanos(1500);

  private static final int FEWEST_REFUSALS = 20;

  /** A device that stands still for so long is not waited for any longer, in milliseconds. */
  static final int LONGEST_STALL_MS = 20_000;

  private final SourceDataLine line;
  private final String name;
  private final int bytesPerFrame;
  private final double nanosPerByte;
  private final long dryBytes;
  private final long untoldBytes;
  private final FrameCounter played;
  private final GapFinder finder;
  private final long longestStallNanos;

  private final long capacity;
  private long fill;
  private long writtenBytes;
  private long dryAtNanos;
  private int gapsMet;
  private boolean isStarted;
  private boolean isExpectingMore;

  LineOut(SourceDataLine line, String name, int heldMs, int longestStallMs) {
    this.line = line;
    this.name = name;
    this.bytesPerFrame = line.getFormat().getFrameSize();
    double bytesPerSecond = line.getFormat().getFrameRate() * bytesPerFrame;
    this.played = new FrameCounter(line.getFormat().getFrameRate());
    this.finder = new GapFinder(line.getFormat().getFrameRate());
    this.longestStallNanos = TimeUnit.MILLISECONDS.toNanos(longestStallMs);
    this.nanosPerByte = TimeUnit.SECONDS.toNanos(1) / bytesPerSecond;
    this.capacity = line.getBufferSize();
    this.fill = Math.min(capacity, (long) (bytesPerSecond * heldMs / 1000));
    this.dryBytes = (long) (bytesPerSecond * DRY_MS / 1000);
    this.untoldBytes = (long) (bytesPerSecond * UNTOLD_MS / 1000);
  }

  @Override
  public void write(byte[] pcm, int offset, int length) throws IOException {
    boolean wasDry = isExpectingMore && isDry();
    waitUntilQueued(Math.max(0, fill - length));
    // A device that stood still may have eaten all it had while it was waited for.
    if (wasDry || isExpectingMore && isDry()) {
      finder.ranDry(writtenBytes / bytesPerFrame);
      played.pause();
    }
    int gaps = finder.gaps().count();
    if (gaps > gapsMet) {
      fill = Math.min(capacity, fill + fill / 2);
    }
    gapsMet = gaps;
    handOver(pcm, offset, length);
    if (!isStarted && writtenBytes + length > fill) {
      start();
    }
    isExpectingMore = isStarted;
    dryAtNanos = System.nanoTime() + (long) (queuedBytes() * nanosPerByte);
  }

  /** A line that has just run dry may refuse once and take the same bytes a moment later. */
  private void handOver(byte[] pcm, int offset, int length) throws IOException {
    long since = System.nanoTime();
    int done = 0;
    int refusals = 0;
    while (true) {
      int taken = Math.max(0, line.write(pcm, offset + done, length - done));
      done += taken;
      writtenBytes += taken;
      if (done == length) {
        return;
      }
      refusals++;
      boolean isLong = System.nanoTime() - since > LONGEST_REFUSAL_NANOS;
      if (!line.isOpen() || isLong && refusals >= FEWEST_REFUSALS) {
        throw gone();
      }
      LockSupport.parkNanos(SHORTEST_WAIT_NANOS);
    }
  }

  private void start() {
    line.start();
    isStarted = true;
  }

  private boolean isDry() {
    return queuedBytes() <= dryBytes || System.nanoTime() - dryAtNanos > LATE_NANOS;
  }

  @Override
  public void drain() {
    if (!isStarted) {
      start();
    }
    dryAtNanos = System.nanoTime() + (long) (queuedBytes() * nanosPerByte);
    long latest = dryAtNanos + LONGEST_REFUSAL_NANOS;
    while (!isDry() || isHolding() && System.nanoTime() < latest) {
      LockSupport.parkNanos(SHORTEST_WAIT_NANOS);
    }
    isExpectingMore = false;
    played.report(writtenBytes / bytesPerFrame, writtenBytes / bytesPerFrame, System.nanoTime());
    played.pause();
    finder.pause();
  }

  /** Whether the device is late and has more to play than it may keep to itself at the end. */
  private boolean isHolding() {
    long queued = queuedBytes();
    return queued > untoldBytes && queued < capacity;
  }

  /** Waits as long as the device makes progress. */
  private void waitUntilQueued(long mostBytes) throws IOException {
    long before = Long.MAX_VALUE;
    long since = System.nanoTime();
    while (isStarted) {
      long queued = queuedBytes();
      if (queued <= mostBytes) {
        return;
      }
      long now = System.nanoTime();
      if (queued < before) {
        before = queued;
        since = now;
      } else if (now - since > longestStallNanos || !line.isOpen()) {
        throw stoodStill();
      }
      long ahead = (long) ((queued - mostBytes) * nanosPerByte / 2);
      LockSupport.parkNanos(Math.max(SHORTEST_WAIT_NANOS, Math.min(LONGEST_WAIT_NANOS, ahead)));
    }
  }

  private long queuedBytes() {
    long queued = Math.max(0, Math.min(writtenBytes, capacity - line.available()));
    if (isStarted && queued < capacity) {
      long written = writtenBytes / bytesPerFrame;
      long now = System.nanoTime();
      played.report(written - queued / bytesPerFrame, written, now);
      finder.report(written - queued / bytesPerFrame, written, now);
    }
    return queued;
  }

  private DeviceException gone() {
    return new DeviceException(
        name + " takes no more sound, as if it had been unplugged",
        DeviceAdvice.to(DeviceAdvice.Kind.PLUG_IN_OUTPUT));
  }

  private DeviceException stoodStill() {
    return new DeviceException(
        name
            + " has stood still for too long, though it is still there; the machine may be too busy",
        DeviceAdvice.to(DeviceAdvice.Kind.NONE));
  }

  @Override
  public long playedFrames() {
    return played.frames(System.nanoTime());
  }

  @Override
  public DeviceGaps gaps() {
    return finder.gaps();
  }

  @Override
  public void close() {
    line.close();
  }
}
