package org.matraloom.device;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;

/** A device that takes only as many frames as the test allows, and keeps them. */
public final class FakeOut implements AudioOut {

  private static final int MOST_AHEAD = 4_800;

  private final List<Short> samples = new ArrayList<>();
  private LongSupplier listener = () -> Long.MAX_VALUE / 2;
  private long allowed;
  private boolean free;
  private boolean closed;
  private boolean drained;
  private final DeviceGaps gaps = new DeviceGaps();
  private IOException trouble;

  /** Lets the device take so many frames in all. */
  public synchronized void allow(long frames) {
    allowed = frames;
    notifyAll();
  }

  /** Lets the device take all there is. */
  public synchronized void letGo() {
    free = true;
    notifyAll();
  }

  public synchronized void runDry() {
    gaps.begin(samples.size());
  }

  /** Tells that it has put in some silence. */
  public synchronized void putIn(long frames) {
    gaps.begin(samples.size());
    gaps.end(frames);
  }

  public synchronized void breakWith(IOException failure) {
    trouble = failure;
    notifyAll();
  }

  @Override
  public synchronized void write(byte[] pcm, int offset, int length) throws IOException {
    drained = false;
    while (isFull()) {
      pause();
    }
    if (trouble != null) {
      throw trouble;
    }
    for (int i = offset; i < offset + length; i += 2) {
      samples.add((short) (pcm[i] & 0xFF | pcm[i + 1] << 8));
    }
    notifyAll();
  }

  /** Waits until so many frames were taken. */
  public synchronized void awaitFrames(long frames) {
    while (samples.size() < frames) {
      pause();
    }
  }

  private boolean isFull() {
    boolean isHeld = !free && samples.size() >= allowed;
    boolean isAhead = samples.size() - listener.getAsLong() > MOST_AHEAD;
    return (isHeld || isAhead) && !closed && trouble == null;
  }

  /** Goes on only as far as somebody has listened. */
  synchronized void keepPaceWith(LongSupplier frames) {
    listener = frames;
  }

  private void pause() {
    try {
      wait(1);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  public synchronized short[] samples() {
    short[] copy = new short[samples.size()];
    for (int i = 0; i < copy.length; i++) {
      copy[i] = samples.get(i);
    }
    return copy;
  }

  public synchronized boolean isClosed() {
    return closed;
  }

  @Override
  public synchronized void drain() {
    drained = true;
  }

  /** Whether no more is to come. */
  synchronized boolean isDrained() {
    return drained;
  }

  /** What was taken at a frame; silence where nothing was. */
  synchronized short sampleAt(long frame) {
    return frame >= 0 && frame < samples.size() ? samples.get((int) frame) : 0;
  }

  @Override
  public synchronized long playedFrames() {
    return samples.size();
  }

  @Override
  public DeviceGaps gaps() {
    return gaps;
  }

  @Override
  public synchronized void close() {
    closed = true;
    notifyAll();
  }
}
