package org.matraloom.device;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

/**
 * How far a device has come, smoothly, though it tells so only in steps and late.
 *
 * <p>What a device tells is never ahead of what it has done, so the report that was least late says
 * most; from there on the time that passes is counted. A device that runs a little slower than the
 * clock of the machine is followed. One thread reports; any thread may ask.
 */
final class FrameCounter {

  private static final double NANOS_PER_SECOND = 1e9;

  /** More than two clocks ever differ by. */
  private static final double DRIFT = 3e-4;

  /** A device that is later than this has stood still for a while. */
  private static final long LATEST_NANOS = TimeUnit.MILLISECONDS.toNanos(60);

  private final double nanosPerFrame;
  private final AtomicLong told = new AtomicLong();
  private boolean isRunning;
  private boolean hasMoved;
  private long firstFrames;
  private long lastReportNanos;
  private volatile long zeroNanos;
  private volatile long reportedFrames;
  private volatile long mostFrames;

  FrameCounter(double framesPerSecond) {
    this.nanosPerFrame = NANOS_PER_SECOND / framesPerSecond;
  }

  /** The device has done at least so many frames, and no more than it was given. */
  void report(long frames, long most, long nanos) {
    long zero = nanos - (long) (frames * nanosPerFrame);
    long leaked = zeroNanos + (long) ((nanos - lastReportNanos) * DRIFT);
    boolean followsOn = isRunning && frames > firstFrames && zero - leaked < LATEST_NANOS;
    if (!isRunning || frames == firstFrames) {
      firstFrames = frames;
      isRunning = true;
    }
    zeroNanos = followsOn && hasMoved ? Math.min(zero, leaked) : zero;
    hasMoved = frames > firstFrames;
    lastReportNanos = nanos;
    mostFrames = most;
    reportedFrames = frames;
  }

  /** The device has stood still; what comes next is counted anew, from its first step. */
  void pause() {
    isRunning = false;
    hasMoved = false;
    mostFrames = reportedFrames;
  }

  /** The frames done at a moment; never fewer than were told before. */
  long frames(long nanos) {
    long estimate = Math.round((nanos - zeroNanos) / nanosPerFrame);
    long frames = Math.max(reportedFrames, Math.min(mostFrames, estimate));
    return told.accumulateAndGet(frames, Math::max);
  }
}
