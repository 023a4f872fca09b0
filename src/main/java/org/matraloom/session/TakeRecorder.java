package org.matraloom.session;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.matraloom.device.AudioIn;
import org.matraloom.device.AudioOut;
import org.matraloom.device.ClockOffset;
import org.matraloom.live.LivePlayer;
import org.matraloom.live.PcmRing;
import org.matraloom.sound.GuideGap;
import org.matraloom.sound.TakeWriter;
import org.matraloom.wav.PcmFormat;

/**
 * Records a take: one thread takes frames from the device and measures their level, another writes
 * them to the disk as they come.
 */
final class TakeRecorder implements AutoCloseable {

  private static final int BLOCK_MS = 10;
  private static final int RING_SECONDS = 10;
  private static final int SAMPLE_BITS = 16;
  private static final int BLOCKS_OF_NOW = 10;
  private static final long WRITE_NANOS = TimeUnit.MILLISECONDS.toNanos(100);
  private static final long CLOSE_MS = 2000;

  private final AudioIn in;
  private final AudioOut out;
  private final PcmFormat format;
  private final PcmRing ring;
  private final ClockOffset offset = new ClockOffset();
  private final int[] lastPeaks = new int[BLOCKS_OF_NOW];
  private final Optional<LiveEar> ear;
  private final Thread captureThread = new Thread(this::capture, "matraloom-capture");
  private final Thread diskThread = new Thread(this::writeAll, "matraloom-disk");

  private long consumedFrames;
  private Optional<Long> firstFrame = Optional.empty();
  private Optional<Long> placed = Optional.empty();
  private List<GuideGap> noted = List.of();

  private volatile Optional<TakeWriter> writer = Optional.empty();
  private volatile List<GuideGap> gaps = List.of();
  private volatile Optional<Long> guideFrame = Optional.empty();
  private volatile int highestPeak;
  private volatile int nowPeak;
  private volatile int lost;
  private volatile boolean closed;
  private volatile Optional<Throwable> failure = Optional.empty();

  /**
   * Prepares to record.
   *
   * @param in where frames come from, 16 bits; closed with this recorder
   * @param out what is played meanwhile, to compare the clocks of both
   * @param format the format of the input
   */
  TakeRecorder(AudioIn in, AudioOut out, PcmFormat format) {
    this(in, out, format, Optional.empty());
  }

  /**
   * Prepares to record what somebody listens to meanwhile.
   *
   * @param in where frames come from, 16 bits; closed with this recorder
   * @param out what is played meanwhile, to compare the clocks of both
   * @param format the format of the input
   * @param ear hears every frame from the first one captured
   */
  TakeRecorder(AudioIn in, AudioOut out, PcmFormat format, Optional<LiveEar> ear) {
    this.ear = ear;
    if (format.bits() != SAMPLE_BITS) {
      throw new IllegalArgumentException("takes have 16 bits, given " + format.bits());
    }
    this.in = in;
    this.out = out;
    this.format = format;
    this.ring = new PcmRing(format.ratePerSecond() * RING_SECONDS * format.bytesPerFrame());
    captureThread.setDaemon(true);
    diskThread.setDaemon(true);
    captureThread.setPriority(Thread.MAX_PRIORITY);
  }

  void open() {
    captureThread.start();
    diskThread.start();
  }

  /** From now on what is captured is written. */
  void begin(TakeWriter take) {
    highestPeak = 0;
    writer = Optional.of(take);
  }

  /**
   * Tells where the guide is and what silences the device has put into it, so that the take tells
   * them too; called now and then while it plays.
   *
   * @param player what plays the guide
   * @param roundTripFrames the delay from output to input, 0 if it is not known
   */
  void follow(LivePlayer player, long roundTripFrames) {
    if (player.position().isEmpty()) {
      return;
    }
    long start = player.startFrame();
    guideFrame = Optional.of(start + roundTripFrames);
    gaps =
        player.gaps().all().stream()
            .filter(gap -> gap.frames() > 0 && gap.atFrame() >= start)
            .map(gap -> new GuideGap(gap.atFrame() - start, gap.frames()))
            .toList();
  }

  InputLevel level() {
    int fullScale = 1 << (SAMPLE_BITS - 1);
    return new InputLevel(
        InputLevel.dbfs(nowPeak, fullScale), InputLevel.dbfs(highestPeak, fullScale));
  }

  /** How often frames were lost, by the device or because the disk was too slow. */
  int lost() {
    return lost + in.overruns();
  }

  void check() throws IOException {
    if (failure.isPresent()) {
      Throwable cause = failure.get();
      if (cause instanceof IOException told) {
        throw told;
      }
      throw new IllegalStateException("the recording has broken off: " + cause, cause);
    }
  }

  private void capture() {
    guard(
        () -> {
          byte[] block =
              new byte[format.ratePerSecond() * BLOCK_MS / 1000 * format.bytesPerFrame()];
          for (int turn = 0; !closed; turn++) {
            int length = in.read(block, 0, block.length);
            lost += ring.write(block, 0, length) < length ? 1 : 0;
            if (ear.isPresent()) {
              ear.get().hear(block, length);
            }
            measure(block, length, turn);
            look();
          }
        });
  }

  /** Compares the clocks of both devices once the output has been running for a while. */
  private void look() {
    long played = out.playedFrames();
    if (played > format.ratePerSecond() / 2) {
      offset.look(in.capturedFrames(), played);
    }
  }

  /** The captured frame at which the guide begins, as soon as it is known. */
  Optional<Long> startFrame() {
    return guideFrame.filter(told -> offset.isKnown()).map(told -> told + offset.frames());
  }

  private void measure(byte[] pcm, int length, int turn) {
    int peak = 0;
    for (int at = 0; at + 1 < length; at += 2) {
      peak = Math.max(peak, Math.abs((short) (pcm[at] & 0xFF | pcm[at + 1] << 8)));
    }
    lastPeaks[turn % BLOCKS_OF_NOW] = peak;
    int now = 0;
    for (int last : lastPeaks) {
      now = Math.max(now, last);
    }
    nowPeak = now;
    highestPeak = Math.max(highestPeak, peak);
  }

  private void writeAll() {
    guard(
        () -> {
          byte[] block = new byte[ring.capacity()];
          while (!closed) {
            write(block);
            LockSupport.parkNanos(WRITE_NANOS);
          }
          write(block);
        });
  }

  private void write(byte[] block) throws IOException {
    Optional<TakeWriter> take = writer;
    int length = ring.read(block, 0, block.length);
    if (take.isPresent()) {
      firstFrame = Optional.of(firstFrame.orElse(consumedFrames));
      take.get().write(block, length);
      place(take.get());
    }
    consumedFrames += length / format.bytesPerFrame();
  }

  private void place(TakeWriter take) throws IOException {
    Optional<Long> start = startFrame();
    if (start.isPresent()) {
      long frame = start.get() - firstFrame.orElseThrow();
      if (!placed.equals(Optional.of(frame))) {
        placed = Optional.of(frame);
        take.startsAt(frame);
      }
    }
    List<GuideGap> known = gaps;
    if (!known.equals(noted)) {
      noted = known;
      take.interruptedBy(known);
    }
  }

  private interface Work {
    void run() throws IOException;
  }

  private void guard(Work work) {
    try {
      work.run();
    } catch (IOException | RuntimeException | Error problem) {
      failure = closed ? failure : Optional.of(problem);
      closed = true;
    }
  }

  /** Ends the recording; all that was captured is on the disk when this returns. */
  @Override
  public void close() {
    closed = true;
    try {
      captureThread.join(CLOSE_MS);
      LockSupport.unpark(diskThread);
      diskThread.join(CLOSE_MS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    in.close();
  }
}
