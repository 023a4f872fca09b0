package org.matraloom.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import org.matraloom.device.AudioOut;
import org.matraloom.device.DeviceGaps;
import org.matraloom.wav.PcmFormat;

/** The audio thread's work hands over what is in the ring, allocates nothing and stops softly. */
class AudioPumpTest {

  private static final PcmFormat FORMAT = PcmFormat.USUAL;
  private static final int BLOCK_BYTES = 480 * 4;

  /** Counts what it is given and remembers the last block. */
  private static final class Sink implements AudioOut {
    private long frames;
    private int drains;
    private final byte[] last = new byte[BLOCK_BYTES];

    @Override
    public void write(byte[] pcm, int offset, int length) {
      frames += length / 4;
      System.arraycopy(pcm, offset, last, 0, length);
    }

    @Override
    public void drain() {
      drains++;
    }

    @Override
    public long playedFrames() {
      return frames;
    }

    @Override
    public DeviceGaps gaps() {
      return new DeviceGaps();
    }

    @Override
    public void close() {}
  }

  private final Sink sink = new Sink();
  private final PcmRing ring = new PcmRing(10 * BLOCK_BYTES);
  private final AudioPump pump = new AudioPump(ring, sink, FORMAT);
  private final byte[] block = new byte[BLOCK_BYTES];

  @Test
  void nothingIsAllocatedInSteadyState() throws IOException {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().getId();
    assertTrue(threads.isThreadAllocatedMemoryEnabled(), "the counter of the JVM works");
    pump.play();
    pass(20_000);
    long before = threads.getThreadAllocatedBytes(thread);
    pass(20_000);
    long after = threads.getThreadAllocatedBytes(thread);
    assertEquals(0, after - before, "bytes allocated for 20000 blocks");
    assertEquals(40_000L * 480, sink.frames);
    byte[] seen = new byte[4_096];
    assertTrue(threads.getThreadAllocatedBytes(thread) - after >= seen.length, "it would be seen");
  }

  private void pass(int blocks) throws IOException {
    for (int i = 0; i < blocks; i++) {
      ring.write(block, 0, block.length);
      pump.step();
    }
  }

  @Test
  void anEndedPieceIsPlayedToItsEndAndTheDeviceDrained() throws IOException {
    pump.play();
    ring.write(block, 0, block.length);
    ring.write(block, 0, 100);
    pump.end();
    while (!pump.isIdle()) {
      pump.step();
    }
    assertEquals(480 + 25, sink.frames);
    assertEquals(480 + 25, pump.writtenFrames());
    assertEquals(1, sink.drains);
  }

  @Test
  void aStopFadesOneBlockAndForgetsTheRest() throws IOException {
    for (int i = 0; i < block.length; i += 2) {
      block[i] = 0x10;
      block[i + 1] = (byte) 0xC0;
    }
    pump.play();
    for (int i = 0; i < 5; i++) {
      ring.write(block, 0, block.length);
    }
    pump.step();
    pump.stop();
    assertFalse(pump.isIdle());
    pump.step();
    assertTrue(pump.isIdle());
    assertEquals(2 * 480, sink.frames);
    assertEquals(0, ring.filled());
    int before = sample(0);
    assertEquals(0xFFFFC010 * 479 / 480, before, "it begins at the strength it had");
    for (int frame = 1; frame < 480; frame++) {
      assertTrue(sample(frame) >= sample(frame - 1), "and falls all the way");
    }
    assertEquals(0, sample(479));
  }

  private int sample(int frame) {
    return (short) (sink.last[4 * frame] & 0xFF | sink.last[4 * frame + 1] << 8);
  }

  @Test
  void idleNothingIsHandedOver() throws IOException {
    ring.write(block, 0, block.length);
    pump.step();
    assertEquals(0, sink.frames);
  }
}
