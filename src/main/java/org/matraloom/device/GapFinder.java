package org.matraloom.device;

import java.util.concurrent.TimeUnit;

/**
 * Finds silences that a device put in, from the device's count of frames and the machine's clock.
 *
 * <p>A device that is busy tells its count late and then catches up; one that had nothing to play
 * stays as late as the silence was long. So a silence is a lateness that does not go away, and it
 * is as long as the least of it. A device that is seen empty has run dry, even where the clock
 * tells nothing. What was taken for a silence is taken back if the device catches up after all.
 * Silences closer together than about two seconds may count as one. One thread reports.
 */
final class GapFinder {

  private static final double NANOS_PER_SECOND = 1e9;

  /** More than two clocks ever differ by. */
  private static final double DRIFT = 3e-4;

  /** Less than this is the unevenness of a count. */
  private static final long SHORTEST_NANOS = TimeUnit.MILLISECONDS.toNanos(4);

  /** So long a device may be late and catch up. */
  private static final long LATE_NANOS = TimeUnit.MILLISECONDS.toNanos(250);

  /** So long a lateness is looked at before it is believed, of a device that was seen empty. */
  private static final long LOOK_NANOS = TimeUnit.MILLISECONDS.toNanos(400);

  /** And of one that was not: on a busy machine a count may be late for long. */
  private static final long LONG_LOOK_NANOS = TimeUnit.MILLISECONDS.toNanos(1500);

  /** Later than this after a silence its length is no longer put right, for clocks drift. */
  private static final long CORRECTED_NANOS = TimeUnit.SECONDS.toNanos(10);

  private static final int FEWEST_STEPS = 8;

  /** A device that has just begun may count unevenly for so long, and then is watched as long. */
  private static final long BEGINNING_NANOS = TimeUnit.MILLISECONDS.toNanos(150);

  private final double nanosPerFrame;
  private final DeviceGaps gaps = new DeviceGaps();

  private boolean isRunning;
  private long firstFrames;
  private long beginningNanos;
  private long onTimeNanos;
  private long lastNanos;
  private long lastFrames;
  private long onTimeFrames;
  private boolean isLate;
  private boolean isNoted;
  private long lateSinceNanos;
  private int steps;
  private long leastNanos;
  private boolean wasSeen;
  private long believedFrames;
  private long believedNanos;

  GapFinder(double framesPerSecond) {
    this.nanosPerFrame = NANOS_PER_SECOND / framesPerSecond;
  }

  DeviceGaps gaps() {
    return gaps;
  }

  /** The device has told that it has played so many of the frames it was given. */
  void report(long frames, long written, long nanos) {
    long zero = nanos - (long) (frames * nanosPerFrame);
    if (!isRunning || frames == firstFrames) {
      isRunning = true;
      firstFrames = frames;
      beginningNanos = nanos;
    }
    onTimeNanos += (long) ((nanos - lastNanos) * DRIFT);
    if (nanos - beginningNanos < 2 * BEGINNING_NANOS) {
      begin(frames, zero, nanos - beginningNanos < BEGINNING_NANOS);
    } else if (zero - onTimeNanos < SHORTEST_NANOS) {
      onTime(frames, zero, nanos);
    } else {
      late(frames, written, zero, nanos);
    }
    lastFrames = frames;
    lastNanos = nanos;
  }

  private void begin(long frames, long zero, boolean isUneven) {
    onTimeNanos = isUneven ? zero : Math.min(onTimeNanos, zero);
    onTimeFrames = frames;
  }

  private void onTime(long frames, long zero, long nanos) {
    if (believedFrames > 0 && zero < onTimeNanos && nanos - believedNanos < CORRECTED_NANOS) {
      correct(Math.round((onTimeNanos - zero) / nanosPerFrame));
    }
    onTimeNanos = Math.min(onTimeNanos, zero);
    onTimeFrames = frames;
    isLate = false;
    isNoted = false;
  }

  private void late(long frames, long written, long zero, long nanos) {
    if (!isLate) {
      isLate = true;
      lateSinceNanos = nanos;
      steps = 0;
      leastNanos = Long.MAX_VALUE;
    }
    boolean hasMoved = frames > lastFrames && frames < written;
    if (hasMoved && nanos - lateSinceNanos > LATE_NANOS) {
      steps++;
      leastNanos = Math.min(leastNanos, zero);
    }
    long look = isNoted ? LOOK_NANOS : LONG_LOOK_NANOS;
    if (steps >= FEWEST_STEPS && nanos - lateSinceNanos > LATE_NANOS + look) {
      settle();
      believedNanos = nanos;
    }
  }

  /** The device has been seen empty though more was to come. */
  void ranDry(long frames) {
    if (!isNoted) {
      isNoted = true;
      believedFrames = 0;
      // Whoever is already found wanting is watched no longer, but measured.
      beginningNanos = Math.min(beginningNanos, lastNanos - 2 * BEGINNING_NANOS);
      gaps.begin(frames);
    }
  }

  /** What comes next is counted anew; a silence that is still looked at is as long as it seems. */
  void pause() {
    if (isRunning && isLate && steps > 0) {
      settle();
    }
    isRunning = false;
    isLate = false;
    isNoted = false;
  }

  private void correct(long lessFrames) {
    long less = Math.min(believedFrames, lessFrames);
    // What is left of a silence that nobody saw may be the unevenness of the count.
    if (!wasSeen && (believedFrames - less) * nanosPerFrame < SHORTEST_NANOS) {
      gaps.shorten(believedFrames);
      gaps.takeBack();
      believedFrames = 0;
    } else {
      gaps.shorten(less);
      believedFrames -= less;
    }
  }

  private void settle() {
    wasSeen = isNoted;
    ranDry(onTimeFrames);
    // While the device was late, what is taken for a drift of its clock went on being added.
    long added = (long) ((lastNanos - lateSinceNanos) * DRIFT);
    believedFrames = Math.round((leastNanos - onTimeNanos + added) / nanosPerFrame);
    gaps.end(believedFrames);
    onTimeNanos = leastNanos;
    isLate = false;
    isNoted = false;
  }
}
