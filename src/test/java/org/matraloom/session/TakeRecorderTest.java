package org.matraloom.session;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.matraloom.device.AudioIn;
import org.matraloom.device.FakeOut;
import org.matraloom.live.Rivers;

/** What the thread that takes frames from the microphone does, and does not do. */
@Timeout(120)
class TakeRecorderTest {

  private static final int WARM_BLOCKS = 3_000;
  private static final int MEASURED_BLOCKS = 2_000;

  /** A microphone in a silent room, ten times as quick as the clock. */
  private static final class QuietRoom implements AudioIn {
    private final AtomicInteger blocks = new AtomicInteger();

    @Override
    public int read(byte[] pcm, int offset, int length) {
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(1));
      blocks.incrementAndGet();
      return length;
    }

    @Override
    public long capturedFrames() {
      return 480L * blocks.get();
    }

    @Override
    public int overruns() {
      return 0;
    }

    @Override
    public void close() {
      // There is no device.
    }

    void await(int count) {
      while (blocks.get() < count) {
        LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(5));
      }
    }
  }

  @Test
  void theCapturingThreadAllocatesNothingWhileSomebodyListens() throws Exception {
    FakeOut out = new FakeOut();
    out.letGo();
    out.write(new byte[2 * Rivers.RATE], 0, 2 * Rivers.RATE);
    QuietRoom in = new QuietRoom();
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    try (LiveEar ear = new LiveEar(Rivers.MONO);
        TakeRecorder recorder = new TakeRecorder(in, out, Rivers.MONO, Optional.of(ear))) {
      ear.open();
      recorder.open();
      in.await(WARM_BLOCKS);
      long thread = captureThread(threads);
      long before = threads.getThreadAllocatedBytes(thread);
      in.await(WARM_BLOCKS + MEASURED_BLOCKS);
      long bytes = threads.getThreadAllocatedBytes(thread) - before;
      assertTrue(ear.peaks().count() > 0, "the ear was given something");
      assertTrue(bytes < MEASURED_BLOCKS, bytes + " bytes in " + MEASURED_BLOCKS + " blocks");
    }
  }

  private static long captureThread(ThreadMXBean threads) {
    return Arrays.stream(threads.dumpAllThreads(false, false))
        .filter(thread -> thread.getThreadName().equals("matraloom-capture"))
        .mapToLong(ThreadInfo::getThreadId)
        .max()
        .orElseThrow();
  }
}
