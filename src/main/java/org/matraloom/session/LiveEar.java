package org.matraloom.session;

import java.io.IOException;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.matraloom.live.PcmRing;
import org.matraloom.onset.BandEnergies;
import org.matraloom.onset.LiveOnsets;
import org.matraloom.onset.Onset;
import org.matraloom.recording.Recording;
import org.matraloom.wav.PcmFormat;

/**
 * Listens to the microphone while it is recorded, on a thread of its own.
 *
 * <p>The thread that takes frames from the device hands them to a ring, which neither waits nor
 * allocates. An ear that is too slow by the length of the ring would tell wrong times, so it falls
 * silent instead; the recording does not suffer.
 */
final class LiveEar implements AutoCloseable {

  private static final int RING_SECONDS = 10;
  private static final long NAP_NANOS = TimeUnit.MILLISECONDS.toNanos(3);
  private static final int BLOCK_MS = 20;
  private static final float FULL_SCALE = -(float) Short.MIN_VALUE;
  private static final long CLOSE_MS = 500;

  private final PcmFormat format;
  private final PcmRing ring;
  private final InputPeaks peaks;
  private final Queue<Onset> found = new ConcurrentLinkedQueue<>();
  private final Thread thread = new Thread(this::listen, "matraloom-ear");

  private volatile long takenBytes;
  private volatile long heardBytes;
  private volatile boolean closed;
  private volatile boolean isBehind;
  private volatile Optional<BandEnergies> whole = Optional.empty();

  /**
   * Prepares to listen.
   *
   * @param format of the microphone: one channel, 16 bits
   */
  LiveEar(PcmFormat format) {
    this.format = format;
    this.ring = new PcmRing(RING_SECONDS * format.ratePerSecond() * format.bytesPerFrame());
    this.peaks = new InputPeaks(format.ratePerSecond());
    thread.setDaemon(true);
  }

  void open() {
    thread.start();
  }

  /** Takes what was captured next; for the capturing thread. */
  void hear(byte[] pcm, int length) {
    if (!isBehind && ring.write(pcm, 0, length) < length) {
      isBehind = true;
    }
    takenBytes += length;
  }

  /** Whether all that was taken has been listened to; for the capturing thread. */
  boolean isIdle() {
    return isBehind || heardBytes >= takenBytes;
  }

  /** An onset that was not asked for before, in seconds from the first frame captured. */
  Optional<Onset> next() {
    return Optional.ofNullable(found.poll());
  }

  /** How loud it was, from the first frame captured. */
  InputPeaks peaks() {
    return peaks;
  }

  /**
   * What was heard from the first frame captured to the last, once the ear is closed; empty if some
   * of it was not.
   */
  Optional<BandEnergies> whole() {
    return whole;
  }

  private void listen() {
    try {
      BandEnergies heard = LiveOnsets.listen(new Captured(), found::add);
      whole = isBehind ? Optional.empty() : Optional.of(heard);
    } catch (IOException cannotBe) {
      isBehind = true;
    }
  }

  /** Ends when what was captured has been heard; half a second is waited for that. */
  @Override
  public void close() {
    closed = true;
    LockSupport.unpark(thread);
    try {
      thread.join(CLOSE_MS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  /** What comes out of the ring, until the ear is closed. */
  private final class Captured implements Recording {
    private final byte[] pcm =
        new byte[format.ratePerSecond() / 1000 * BLOCK_MS * format.bytesPerFrame()];
    private long readBytes;

    @Override
    public int ratePerSecond() {
      return format.ratePerSecond();
    }

    @Override
    public int read(float[] block) {
      int most = Math.min(pcm.length, 2 * block.length);
      int length = ring.read(pcm, 0, most);
      if (length == 0) {
        heardBytes = readBytes;
      }
      while (length == 0 && !closed && !isBehind) {
        LockSupport.parkNanos(NAP_NANOS);
        length = ring.read(pcm, 0, most);
      }
      for (int i = 0; i < length / 2; i++) {
        block[i] = (short) (pcm[2 * i] & 0xFF | pcm[2 * i + 1] << 8) / FULL_SCALE;
      }
      readBytes += length;
      peaks.add(block, length / 2);
      return isBehind ? 0 : length / 2;
    }

    @Override
    public void close() {
      // The ring belongs to the ear.
    }
  }
}
