package org.matraloom.live;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.matraloom.device.AudioOut;
import org.matraloom.wav.PcmFormat;

/**
 * The audio thread's work: copies from the ring to the device and does nothing else.
 *
 * <p>In steady state it allocates nothing, takes no lock of its own, logs nothing and touches no
 * file. When it is asked to stop, it fades what it has in hand, forgets the rest and waits until
 * the device is silent.
 */
final class AudioPump {

  /** How much is handed over at a time, in milliseconds. */
  static final int BLOCK_MS = 10;

  private static final long NAP_NANOS = TimeUnit.MILLISECONDS.toNanos(1);

  private enum Phase {
    IDLE,
    PLAYING,
    ENDING,
    STOPPING
  }

  private final PcmRing ring;
  private final AudioOut out;
  private final PcmFade fade;
  private final byte[] block;
  private final int bytesPerFrame;

  private volatile Phase phase = Phase.IDLE;
  private volatile long writtenFrames;

  AudioPump(PcmRing ring, AudioOut out, PcmFormat format) {
    this.ring = ring;
    this.out = out;
    this.fade = new PcmFade(format);
    this.bytesPerFrame = format.bytesPerFrame();
    this.block = new byte[format.ratePerSecond() * BLOCK_MS / 1000 * bytesPerFrame];
  }

  /** How many frames have been handed over in all. */
  long writtenFrames() {
    return writtenFrames;
  }

  boolean isIdle() {
    return phase == Phase.IDLE;
  }

  /** What comes into the ring from now on is to be played; called while idle. */
  void play() {
    phase = Phase.PLAYING;
  }

  /** No more will come into the ring; what is in it is played to its end. */
  void end() {
    if (phase == Phase.PLAYING) {
      phase = Phase.ENDING;
    }
  }

  /** Nothing more is to be heard; what is in the ring is forgotten. */
  void stop() {
    if (phase != Phase.IDLE) {
      phase = Phase.STOPPING;
    }
  }

  /** Does one block's work, or naps if there is none. */
  void step() throws IOException {
    Phase now = phase;
    int length = now == Phase.IDLE ? 0 : ring.read(block, 0, block.length);
    if (now == Phase.STOPPING) {
      fade.out(block, length);
    }
    if (length > 0) {
      out.write(block, 0, length);
      writtenFrames += length / bytesPerFrame;
    }
    if (now == Phase.STOPPING || now == Phase.ENDING && length == 0) {
      ring.clear();
      out.drain();
      phase = Phase.IDLE;
    } else if (length == 0) {
      LockSupport.parkNanos(NAP_NANOS);
    }
  }
}
