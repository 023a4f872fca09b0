package org.matraloom.device;

import java.util.List;
import java.util.concurrent.atomic.AtomicLongArray;
import java.util.stream.IntStream;

/**
 * The silences that a device put in, as far as they are known. One thread notes them, and allocates
 * nothing meanwhile; any thread may ask.
 */
public final class DeviceGaps {

  /** So many are told one by one; further ones are counted. */
  private static final int KEPT = 1_000;

  private final AtomicLongArray atFrames = new AtomicLongArray(KEPT);
  private final AtomicLongArray lengths = new AtomicLongArray(KEPT);
  private volatile int count;
  private volatile long silentFrames;

  /** Notes a silence whose length is not known yet. */
  void begin(long atFrame) {
    if (count < KEPT) {
      atFrames.set(count, atFrame);
      lengths.set(count, 0);
    }
    count++;
  }

  /** Notes how long the latest silence was. */
  void end(long frames) {
    if (count > 0 && count <= KEPT) {
      lengths.set(count - 1, frames);
    }
    silentFrames += frames;
  }

  /** The latest silence was shorter than it seemed. */
  void shorten(long byFrames) {
    if (count > 0 && count <= KEPT) {
      lengths.addAndGet(count - 1, -byFrames);
    }
    silentFrames -= byFrames;
  }

  /** The latest silence, of which nothing is left, was none. */
  void takeBack() {
    count--;
  }

  /**
   * How many there were.
   *
   * @return silences since the device was opened
   */
  public int count() {
    return count;
  }

  /**
   * How long all of them were together, those whose length is not known yet left out.
   *
   * @return frames
   */
  public long silentFrames() {
    return silentFrames;
  }

  /**
   * The first thousand of them.
   *
   * @return in the order in which they were heard
   */
  public List<DeviceGap> all() {
    return IntStream.range(0, Math.min(count, KEPT))
        .mapToObj(i -> new DeviceGap(atFrames.get(i), lengths.get(i)))
        .toList();
  }
}
