package org.matraloom.live;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What goes into the ring comes out of it, once and in order. */
class PcmRingTest {

  @Test
  void bytesComeOutInOrderWhateverTheSizes() {
    PcmRing ring = new PcmRing(1_000);
    SplittableRandom random = new SplittableRandom(7);
    byte[] block = new byte[1_500];
    int in = 0;
    int out = 0;
    for (int turn = 0; turn < 20_000; turn++) {
      int offset = random.nextInt(100);
      int length = random.nextInt(1_400);
      for (int i = 0; i < length; i++) {
        block[offset + i] = (byte) (in + i);
      }
      in += ring.write(block, offset, length);
      assertEquals(in - out, ring.filled());
      int count = ring.read(block, offset, random.nextInt(1_400));
      for (int i = 0; i < count; i++) {
        assertEquals((byte) (out + i), block[offset + i]);
      }
      out += count;
    }
    assertEquals(true, in > 1_000_000);
  }

  @Test
  void twoThreadsPassAMillionBytes() throws InterruptedException {
    PcmRing ring = new PcmRing(4_099);
    int total = 1_000_000;
    Thread writer =
        new Thread(
            () -> {
              byte[] block = new byte[777];
              int in = 0;
              while (in < total) {
                int length = Math.min(block.length, total - in);
                for (int i = 0; i < length; i++) {
                  block[i] = (byte) (31 * (in + i));
                }
                in += ring.write(block, 0, length);
                Thread.onSpinWait();
              }
            });
    writer.start();
    byte[] block = new byte[512];
    int wrong = 0;
    for (int out = 0; out < total; ) {
      int count = ring.read(block, 0, block.length);
      for (int i = 0; i < count; i++) {
        wrong += block[i] == (byte) (31 * (out + i)) ? 0 : 1;
      }
      out += count;
      Thread.yield();
    }
    writer.join();
    assertEquals(0, wrong);
    assertEquals(0, ring.filled());
  }
}
